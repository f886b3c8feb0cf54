package org.tenthwise.app.picture;

import java.util.List;

/** An upright rectangle on the sheet. */
public record Box(double left, double top, double right, double bottom) {

    public double width() {
        return right - left;
    }

    public double height() {
        return bottom - top;
    }

    public double centreX() {
        return (left + right) / 2;
    }

    public double centreY() {
        return (top + bottom) / 2;
    }

    /** This box with {@code by} more on every side; less where negative. */
    public Box grown(double by) {
        return new Box(left - by, top - by, right + by, bottom + by);
    }

    public boolean meets(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    /** Whether a point lies inside, not on an edge. */
    boolean encloses(Point point) {
        return left < point.x() && point.x() < right && top < point.y() && point.y() < bottom;
    }

    public boolean holds(Box other) {
        return left <= other.left && top <= other.top && right >= other.right && bottom >= other.bottom;
    }

    Point centre() {
        return new Point(centreX(), centreY());
    }

    /** To its nearest point; zero inside. */
    double distanceTo(Point point) {
        return point.distanceTo(
                new Point(Math.min(Math.max(point.x(), left), right), Math.min(Math.max(point.y(), top), bottom)));
    }

    /** The part of this box that lies in {@code other}, which it meets. */
    public Box within(Box other) {
        return new Box(
                Math.max(left, other.left),
                Math.max(top, other.top),
                Math.min(right, other.right),
                Math.min(bottom, other.bottom));
    }

    public List<Point> corners() {
        return List.of(new Point(left, top), new Point(right, top), new Point(right, bottom), new Point(left, bottom));
    }
}
