package org.tenthwise.app.export.qif;

/**
 * Text that XML 1.0 can hold.
 *
 * <p>Source: Extensible Markup Language 1.0, fifth edition, production 2 (Char).
 */
final class XmlText {

    /** Unicode's own stand-in for what cannot be shown. */
    private static final int STAND_IN = 0xFFFD;

    private static final int LAST_OF_PLANE_0 = 0xFFFD;
    private static final int FIRST_SURROGATE = 0xD800;
    private static final int AFTER_SURROGATES = 0xE000;

    private XmlText() {}

    /** The same, with a stand-in for every sign that may stand in no document. */
    static String safe(String text) {
        return text.codePoints()
                .map(sign -> isAllowed(sign) ? sign : STAND_IN)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static boolean isAllowed(int sign) {
        boolean blank = sign == '\t' || sign == '\n' || sign == '\r';
        return blank
                || sign >= ' ' && sign < FIRST_SURROGATE
                || sign >= AFTER_SURROGATES && sign <= LAST_OF_PLANE_0
                || sign >= Character.MIN_SUPPLEMENTARY_CODE_POINT;
    }
}
