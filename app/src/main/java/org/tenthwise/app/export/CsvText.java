package org.tenthwise.app.export;

/**
 * Text that a spreadsheet will not run.
 *
 * <p>An apostrophe goes before a text that begins with = + - @, with their full-width forms, or with a tab, a line end
 * or NUL. Source: OWASP Application Security Verification Standard 5.0, 1.2.10; CWE-1236.
 */
public final class CsvText {

    private static final String RUN_BY_SPREADSHEETS = "=+-@\t\r\n\0\uFF1D\uFF0B\uFF0D\uFF20";

    private CsvText() {}

    public static String safe(String text) {
        return !text.isEmpty() && RUN_BY_SPREADSHEETS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
