package org.tenthwise.app.picture;

import java.util.List;

/**
 * Weight and dashes of a line. Thick lines are things, thin ones say something about things.
 *
 * @param width pixels on the screen
 * @param dash lengths of line and gap in turn; empty for an unbroken line
 */
public record Stroke(double width, List<Double> dash) {

    public static final Stroke OUTLINE = solid(3);
    /** The wall as it was measured. */
    public static final Stroke WALL = solid(4);
    /** The surface as read where it decides. */
    public static final Stroke READ = solid(5);

    public static final Stroke THIN = solid(1.25);
    /** A neighbouring part: jaw, insert. */
    public static final Stroke NEIGHBOUR = solid(1.5);

    public static final Stroke CENTRE = new Stroke(1.25, List.of(18.0, 4.0, 3.0, 4.0));
    /** A finished size under stock. */
    public static final Stroke AIM = new Stroke(1.5, List.of(18.0, 4.0, 3.0, 4.0, 3.0, 4.0));

    public static final Stroke CUT_METAL = solid(1.1);
    public static final Stroke STOCK = solid(1.8);
    public static final Stroke RULE = solid(1);

    public Stroke {
        dash = List.copyOf(dash);
    }

    public static Stroke solid(double width) {
        return new Stroke(width, List.of());
    }

    /** The same line drawn {@code factor} as heavy, dashes and all. */
    public Stroke times(double factor) {
        return new Stroke(
                width * factor, dash.stream().map(length -> length * factor).toList());
    }
}
