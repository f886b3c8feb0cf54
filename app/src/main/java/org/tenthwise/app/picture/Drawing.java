package org.tenthwise.app.picture;

import java.util.List;

/** A pen with the room it draws in: what a picture is drawn with. */
public final class Drawing {

    private static final double HEAD_LENGTH = 12;
    private static final double HEAD_WIDTH = 6.8;
    private static final double METAL_SPACING = 10;
    private static final double STOCK_SPACING = 6;
    private static final double BAND_SPACING = 7;

    private final Pen pen;
    private final TextMetrics lettering;
    private final Frame frame;

    public Drawing(Pen pen, TextMetrics lettering, Frame frame) {
        this.pen = pen;
        this.lettering = lettering;
        this.frame = frame;
    }

    /** The same room without ink: for finding out what fits. */
    public Drawing rehearsal() {
        return rehearsal(new NullPen());
    }

    Drawing rehearsal(NullPen other) {
        return new Drawing(other, lettering, frame);
    }

    public Frame frame() {
        return frame;
    }

    /** Room for a picture of its own within this one, its upper left corner at {@code corner}. */
    public Drawing inset(Point corner, Frame own) {
        return new Drawing(new ShiftedPen(pen, corner.x(), corner.y()), lettering, own);
    }

    /** Room {@code scale} as large as this one's, its upper left corner at {@code corner}. */
    public Drawing scaled(double scale, Point corner, Frame own) {
        return new Drawing(new ScaledPen(pen, scale, corner), lettering, own);
    }

    /** {@code pixels} that grow with the text: room for lettering. */
    public double lettered(double pixels) {
        return pixels * frame.textScale();
    }

    /** {@code pixels} that shrink with the lines, within bounds: room for ticks and heads. */
    public double ruled(double pixels) {
        return pixels * Math.max(0.6, frame.lineScale());
    }

    public void line(Point from, Point to, Stroke stroke, Role role) {
        chain(List.of(from, to), stroke, role);
    }

    /** A level line at the height {@code y}. */
    public void across(double y, double from, double to, Stroke stroke, Role role) {
        line(new Point(from, y), new Point(to, y), stroke, role);
    }

    /** An upright line at {@code x}. */
    public void down(double x, double from, double to, Stroke stroke, Role role) {
        line(new Point(x, from), new Point(x, to), stroke, role);
    }

    public void chain(List<Point> points, Stroke stroke, Role role) {
        pen.stroke(new Shape.Polyline(points, false), stroke.times(frame.lineScale()), role);
    }

    void ring(List<Point> points, Stroke stroke, Role role) {
        pen.stroke(new Shape.Polyline(points, true), stroke.times(frame.lineScale()), role);
    }

    public void area(List<Point> points, Role role) {
        pen.fill(new Shape.Polyline(points, true), role);
    }

    public void disc(Point centre, double radius, Role role) {
        pen.fill(new Shape.Circle(centre, radius), role);
    }

    public void circle(Point centre, double radius, Stroke stroke, Role role) {
        pen.stroke(new Shape.Circle(centre, radius), stroke.times(frame.lineScale()), role);
    }

    /** Cut metal: what lies inside an odd number of the outlines. */
    void metal(List<List<Point>> rings) {
        hatch(rings, 45, METAL_SPACING, Stroke.CUT_METAL, Role.HATCH);
    }

    /** Cut metal of a second part, hatched the other way. */
    void otherMetal(List<Point> area) {
        hatch(List.of(area), -45, METAL_SPACING, Stroke.CUT_METAL, Role.HATCH);
    }

    /** What is still to be cut away. */
    void stock(List<Point> area) {
        hatch(List.of(area), 45, STOCK_SPACING, Stroke.STOCK, Role.CUTFILL);
    }

    /** Between a limit and the limit less its guard band, hatched the other way. */
    public void guardBand(List<Point> area) {
        hatch(List.of(area), -45, BAND_SPACING, Stroke.CUT_METAL, Role.UNPROVEN);
    }

    private void hatch(List<List<Point>> rings, double degrees, double spacing, Stroke stroke, Role role) {
        double apart = spacing * Math.max(0.5, frame.lineScale());
        Hatching.lines(rings, degrees, apart).forEach(line -> pen.stroke(line, stroke.times(frame.lineScale()), role));
    }

    public double width(Label label) {
        return lettering.width(label.text(), label.face(), lettered(label.size()));
    }

    /** Height of its capitals. */
    public double height(Label label) {
        return TextMetrics.CAPITAL * lettered(label.size());
    }

    /** The box a text would fill, tails and all. */
    public Box boxOf(Label label, Point at, Anchor anchor) {
        double left = at.x() - anchor.across * width(label);
        double top = at.y() - anchor.down * height(label);
        return new Box(left, top, left + width(label), top + height(label) + TextMetrics.TAIL * lettered(label.size()));
    }

    public Box text(Label label, Point at, Anchor anchor) {
        return text(label, at, anchor, frame.ground());
    }

    /** In the middle of {@code room}. */
    public Box text(Label label, Box room) {
        return text(label, room, Anchor.CENTRE);
    }

    /** Half-way up {@code room}, at its left or right end or in its middle. */
    public Box text(Label label, Box room, Anchor anchor) {
        return text(label, new Point(room.left() + anchor.across * room.width(), room.centreY()), anchor);
    }

    /** @param under what is laid under a backed label */
    public Box text(Label label, Point at, Anchor anchor, Role under) {
        Box box = boxOf(label, at, anchor);
        double size = lettered(label.size());
        if (label.backed()) {
            area(
                    new Box(box.left() - 4, box.top() - 4, box.right() + 4, box.top() + height(label) + 4)
                            .within(frame.box())
                            .corners(),
                    under);
        }
        Point start = new Point(box.left(), box.top() + height(label));
        for (TextMetrics.TextRun run : lettering.runs(label.text(), label.face(), size)) {
            if (run.isDiameterSign()) {
                DiameterSign.draw(pen, run.face(), start, size, label.role());
            } else {
                pen.text(run.face(), run.text(), start, size, label.role());
            }
            start = start.plus(run.width(), 0);
        }
        return box;
    }

    /** A filled arrow head with its tip at {@code tip}, coming from the side of {@code from}. */
    public void head(Point from, Point tip, Role role) {
        head(from, tip, ruled(HEAD_LENGTH), ruled(HEAD_WIDTH), role);
    }

    void head(Point from, Point tip, double length, double width, Role role) {
        double along = from.distanceTo(tip);
        double ux = (tip.x() - from.x()) / along;
        double uy = (tip.y() - from.y()) / along;
        Point foot = tip.plus(-ux * length, -uy * length);
        area(
                List.of(tip, foot.plus(-uy * width / 2, ux * width / 2), foot.plus(uy * width / 2, -ux * width / 2)),
                role);
    }

    /**
     * A dimension line with a head at both ends; where there is no room between them, the heads stand outside.
     *
     * @return the line, which then reaches further than the dimension
     */
    Shape.Polyline dimension(Point from, Point to, Role role) {
        double head = ruled(HEAD_LENGTH);
        if (from.distanceTo(to) >= 2.4 * head) {
            line(from, to, Stroke.THIN, role);
            head(to, from, role);
            head(from, to, role);
            return new Shape.Polyline(List.of(from, to), false);
        }
        return dimensionFromOutside(from, to, role);
    }

    /** The same with the heads outside in any case. */
    Shape.Polyline dimensionFromOutside(Point from, Point to, Role role) {
        double head = ruled(HEAD_LENGTH);
        double length = from.distanceTo(to);
        Point before = length > 0 ? from.towards(to, -2 * head / length) : from.plus(0, -2 * head);
        Point after = length > 0 ? to.towards(from, -2 * head / length) : to.plus(0, 2 * head);
        line(before, after, Stroke.THIN, role);
        head(before, from, role);
        head(after, to, role);
        return new Shape.Polyline(List.of(before, after), false);
    }
}
