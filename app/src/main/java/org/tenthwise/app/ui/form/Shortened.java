package org.tenthwise.app.ui.form;

/**
 * Words cut to what a key has room for, with a sign that they are; the whole of them stands elsewhere on the screen.
 */
public final class Shortened {

    private Shortened() {}

    public static String to(int longest, String text) {
        return text.length() <= longest ? text : text.substring(0, longest - 1).replaceFirst("[\\s,;:]+$", "") + "…";
    }
}
