package org.tenthwise.app.export.pdf;

import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.Role;
import org.tenthwise.model.words.LocaleCustoms;

/** What a record is printed on. */
public enum Paper {
    /** ISO 216: 210 mm by 297 mm. */
    A4(210, 297),
    /** ANSI A: 8½ in by 11 in. */
    LETTER(8.5 * 25.4, 11 * 25.4);

    private static final double PIXELS_PER_MM = 96 / 25.4;

    private final double width;
    private final double height;

    Paper(double widthMm, double heightMm) {
        this.width = widthMm * PIXELS_PER_MM;
        this.height = heightMm * PIXELS_PER_MM;
    }

    /** What is in the printers of a place. */
    public static Paper of(LocaleCustoms customs) {
        return customs.printsOnLetterPaper() ? LETTER : A4;
    }

    /** In pixels, 96 to the inch. */
    double width() {
        return width;
    }

    double height() {
        return height;
    }

    /** From its edge to where what is laid out for A4 begins. */
    double left() {
        return (width - A4.width) / 2;
    }

    /** Text and lines at their own size. */
    Frame frame() {
        return new Frame(width, height, 1, 1, Role.SHEET);
    }
}
