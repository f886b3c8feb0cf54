package org.tenthwise.app.export.pdf;

/** Free text as the particulars of a document can hold it: without control signs and half signs, which XML refuses. */
final class PrintableText {

    private PrintableText() {}

    static String of(String text) {
        StringBuilder kept = new StringBuilder();
        text.codePoints()
                .map(sign -> Character.isISOControl(sign) ? ' ' : sign)
                .map(sign -> Character.getType(sign) == Character.SURROGATE || sign >= 0xFFFE && sign <= 0xFFFF
                        ? 0xFFFD
                        : sign)
                .forEach(kept::appendCodePoint);
        return kept.toString().strip();
    }
}
