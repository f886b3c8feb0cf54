package org.tenthwise.app.picture;

import java.util.List;

/**
 * Holes on their circle as they are looked at along the axis, with their numbers. X points to the right, Y upwards.
 *
 * @param degrees where each hole lies, counter-clockwise from +X
 */
public record BoltCirclePicture(List<Double> degrees, String spoken) implements Picture {

    private static final double TEXT = 20;
    private static final double EDGE = 12;
    private static final double HOLE = 0.11;
    private static final double INSIDE = 0.72;
    /** More numbers would lie on one another. */
    private static final int MOST_NUMBERS = 12;

    public BoltCirclePicture {
        degrees = List.copyOf(degrees);
    }

    @Override
    public void draw(Drawing drawing) {
        Box frame = drawing.frame().box();
        double outer = Math.min(frame.width(), frame.height()) / 2 - EDGE;
        double radius = outer * (1 - HOLE);
        double hole = Math.min(outer * HOLE, radius * Math.sin(Math.PI / degrees.size()) / 2);
        Point centre = frame.centre();
        drawing.circle(centre, radius, Stroke.CENTRE, Role.LINE);
        drawing.across(centre.y(), centre.x() - outer, centre.x() + outer, Stroke.CENTRE, Role.LINE);
        drawing.down(centre.x(), centre.y() - outer, centre.y() + outer, Stroke.CENTRE, Role.LINE);
        for (int i = 0; i < degrees.size(); i++) {
            double at = Math.toRadians(degrees.get(i));
            Point middle = centre.plus(radius * Math.cos(at), -radius * Math.sin(at));
            drawing.disc(middle, hole, drawing.frame().ground());
            drawing.circle(middle, hole, Stroke.OUTLINE, i == 0 ? Role.ACCENT : Role.LINE);
            Label number = Label.of(String.valueOf(i + 1), TEXT, i == 0 ? Role.ACCENT : Role.INK)
                    .bold()
                    .onGround();
            boolean room = outer > 4 * drawing.height(number) && degrees.size() <= MOST_NUMBERS;
            if (i == 0 || room) {
                double near = INSIDE * radius;
                drawing.text(number, centre.plus(near * Math.cos(at), -near * Math.sin(at)), Anchor.CENTRE);
            }
        }
    }
}
