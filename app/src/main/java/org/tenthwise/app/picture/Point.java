package org.tenthwise.app.picture;

/** A spot on the sheet, in pixels, x to the right and y downwards. */
public record Point(double x, double y) {

    public Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }

    /**
     * The spot {@code distance} away at {@code degrees}, counted clockwise from straight up, as a part is looked at.
     */
    public Point polar(double distance, double degrees) {
        double angle = Math.toRadians(degrees);
        return new Point(x + distance * Math.sin(angle), y - distance * Math.cos(angle));
    }

    double distanceTo(Point other) {
        return Math.hypot(other.x - x, other.y - y);
    }

    /** The spot {@code share} of the way from here to {@code other}. */
    Point towards(Point other, double share) {
        return new Point(x + (other.x - x) * share, y + (other.y - y) * share);
    }
}
