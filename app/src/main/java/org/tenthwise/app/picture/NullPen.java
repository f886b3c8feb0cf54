package org.tenthwise.app.picture;

/** Leaves nothing: for laying a picture out to see what fits. */
final class NullPen implements Pen {

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
        // leaves nothing
    }
}
