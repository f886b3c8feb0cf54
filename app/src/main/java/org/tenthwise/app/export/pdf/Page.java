package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.Role;

/** A page in the making: what is drawn on it, in order. */
final class Page {

    /** A4 at 96 pixels to the inch: 210 mm by 297 mm. */
    static final double WIDTH = 210 / 25.4 * 96;

    static final double HEIGHT = 297 / 25.4 * 96;
    /** Text and lines at their own size. */
    static final Frame FRAME = new Frame(WIDTH, HEIGHT, 1, 1, Role.SHEET);

    private final List<Consumer<Drawing>> marks = new ArrayList<>();

    void add(Consumer<Drawing> mark) {
        marks.add(mark);
    }

    /** @param drawing with the frame {@link #FRAME} */
    void draw(Drawing drawing) {
        marks.forEach(mark -> mark.accept(drawing));
    }
}
