package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;

/** Leaves nothing, and knows what was written: for laying a picture out to see what fits. */
final class NullPen implements Pen {

    private final List<String> written = new ArrayList<>();

    List<String> written() {
        return written;
    }

    @Override
    public void stroke(Shape shape, Stroke stroke, Role role) {
        // leaves nothing
    }

    @Override
    public void fill(Shape shape, Role role) {
        // leaves nothing
    }

    @Override
    public void text(Face face, String text, Point start, double size, Role role) {
        written.add(text);
    }
}
