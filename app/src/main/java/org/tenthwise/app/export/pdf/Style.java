package org.tenthwise.app.export.pdf;

import org.tenthwise.app.picture.Face;
import org.tenthwise.app.picture.Label;
import org.tenthwise.app.picture.Role;

/**
 * How a text of the record is lettered.
 *
 * @param size pixels to the em, of 96 to the inch; 11 at least, which is 8¼ pt
 */
record Style(double size, Face face, Role role) {

    static final Style TITLE = new Style(26, Face.BOLD, Role.INK);
    static final Style HEADING = new Style(20, Face.BOLD, Role.INK);
    static final Style NAME = new Style(15, Face.BOLD, Role.INK);
    static final Style STRONG = new Style(13, Face.BOLD, Role.INK);
    static final Style TEXT = new Style(12, Face.REGULAR, Role.INK);
    static final Style BOLD = new Style(12, Face.BOLD, Role.INK);
    static final Style SMALL = new Style(11, Face.REGULAR, Role.INK2);
    /** In a table where a line is one characteristic. */
    static final Style CELL = new Style(11, Face.REGULAR, Role.INK);

    static final Style SMALL_BOLD = new Style(11, Face.BOLD, Role.INK);

    Style in(Role other) {
        return new Style(size, face, other);
    }

    Style regular() {
        return new Style(size, Face.REGULAR, role);
    }

    Label label(String text) {
        Label plain = Label.of(text, size, role);
        return face == Face.BOLD ? plain.bold() : plain;
    }

    /** From line to line. */
    double leading() {
        return Math.ceil(size * 1.3);
    }
}
