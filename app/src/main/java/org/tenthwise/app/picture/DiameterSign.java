package org.tenthwise.app.picture;

import java.util.List;

/** The sign before a diameter: a circle as high as a figure with a slanted stroke through it (ISO 3098, ISO 129-1). */
final class DiameterSign {

    /** How a text asks for the sign. */
    static final String TEXT = "\u2300";
    /** What it is where a text is read, not seen. */
    private static final String LETTER = "\u00d8";
    /** Width with the room on both sides, in ems. */
    static final double ADVANCE = 0.74;

    private static final double RADIUS = 0.285;
    private static final double REACH = 0.42;

    private DiameterSign() {}

    /** @param start left end of the base line */
    static void draw(Pen pen, Face face, Point start, double size, Role role) {
        boolean bold = face == Face.BOLD;
        Point centre = start.plus(ADVANCE / 2 * size, -TextMetrics.CAPITAL / 2 * size);
        Stroke stroke = Stroke.solid(size * (bold ? 0.115 : 0.075));
        pen.stroke(new Shape.Circle(centre, RADIUS * size), stroke, role);
        pen.stroke(
                new Shape.Polyline(List.of(centre.polar(REACH * size, 30), centre.polar(REACH * size, 210)), false),
                stroke,
                role);
        pen.unseen(face, LETTER, start, size);
    }
}
