package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.tenthwise.app.picture.Drawing;

/** A page in the making: what is drawn on it, in order. */
final class Page {

    private final List<Consumer<Drawing>> marks = new ArrayList<>();

    void add(Consumer<Drawing> mark) {
        marks.add(mark);
    }

    /** @param drawing with the frame of its {@link Paper} */
    void draw(Drawing drawing) {
        marks.forEach(mark -> mark.accept(drawing));
    }
}
