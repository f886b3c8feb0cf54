package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * A depth: a block cut open, its face at the right, the floor at the left with the limits as thin lines beside it. Of a
 * drilled hole, whose depth goes to the end of the full diameter, the point lies beyond that.
 */
final class FloorSection {

    /** Pixels for the width of the tolerance. */
    private static final double TOLERANCE = 30;

    private static final double TEXT = 22;
    /** Metal left before the point of a drill. */
    private static final double WALL = 20;

    private final SizePicture picture;
    private final Drawing drawing;
    private final StripScale scale;
    private final Box block;
    private final double upper;
    private final double lower;
    private final double nominal;
    private final double tolerance;

    FloorSection(SizePicture picture, Drawing drawing, Box room, StripScale scale) {
        this.picture = picture;
        this.drawing = drawing;
        this.scale = scale;
        this.block = new Box(
                room.left() + 4,
                room.top() + drawing.lettered(34),
                room.right() - 24,
                room.bottom() - drawing.lettered(52));
        this.upper = block.top() + block.height() * 0.26;
        this.lower = block.bottom() - block.height() * 0.26;
        this.tolerance = Math.min(TOLERANCE, block.width() * 0.08);
        this.nominal = block.left() + block.width() * 0.3;
    }

    void draw() {
        double floor =
                picture.judged().map(judged -> x(scale.share(judged.size()))).orElse(nominal);
        boolean read = picture.judged().isPresent();
        List<Point> recess = List.of(
                new Point(block.right(), upper),
                new Point(floor, upper),
                new Point(floor, lower),
                new Point(block.right(), lower));
        List<Point> broken = List.of(
                new Point(block.left() + 6, block.top()),
                new Point(block.left() + 13, block.top() + block.height() * 0.35),
                new Point(block.left() + 2, block.top() + block.height() * 0.65),
                new Point(block.left() + 8, block.bottom()));
        List<Point> ring = new ArrayList<>(broken);
        ring.add(new Point(block.right(), block.bottom()));
        ring.add(new Point(block.right(), lower));
        ring.add(new Point(floor, lower));
        ring.add(tip(floor));
        ring.add(new Point(floor, upper));
        ring.add(new Point(block.right(), upper));
        ring.add(new Point(block.right(), block.top()));
        drawing.metal(List.of(ring));
        stock(floor);
        drawing.chain(broken, Stroke.THIN, Role.LINE);
        drawing.chain(
                List.of(broken.get(0), new Point(block.right(), block.top()), recess.get(0)),
                Stroke.OUTLINE,
                Role.LINE);
        drawing.chain(
                List.of(broken.get(3), new Point(block.right(), block.bottom()), recess.get(3)),
                Stroke.OUTLINE,
                Role.LINE);
        drawing.line(recess.get(0), recess.get(1), Stroke.OUTLINE, Role.LINE);
        drawing.line(recess.get(2), recess.get(3), Stroke.OUTLINE, Role.LINE);
        drawing.chain(List.of(recess.get(1), tip(floor), recess.get(2)), Stroke.OUTLINE, Role.LINE);
        for (SizePicture.Sized limit : picture.limits()) {
            drawing.down(x(scale.share(limit.size())), upper - 18, lower + 18, Stroke.THIN, Role.LINE);
        }
        drawing.line(recess.get(1), recess.get(2), read ? Stroke.READ : Stroke.OUTLINE, read ? Role.ACCENT : Role.LINE);
        depth(floor);
    }

    /**
     * Where a floor at {@code at} is deepest: the point of a drill by its angle, the floor itself where nothing was
     * drilled.
     */
    private Point tip(double at) {
        double point = picture.beside() instanceof SizePicture.Beside.Drilled drilled
                ? (lower - upper)
                        / 2
                        / Math.tan(Math.toRadians(drilled.pointAngle().doubleValue() / 2))
                : 0;
        return new Point(Math.max(at - point, Math.min(at, block.left() + WALL)), (upper + lower) / 2);
    }

    /** Greater depths lie further left. */
    private double x(double share) {
        return nominal - share * tolerance;
    }

    private void stock(double floor) {
        picture.judged().filter(judged -> picture.cut().isPresent()).ifPresent(judged -> {
            double then = x(scale.share(picture.afterCut(judged.size())));
            List<Point> comesOff = List.of(
                    new Point(floor, upper),
                    new Point(then, upper),
                    tip(then),
                    new Point(then, lower),
                    new Point(floor, lower),
                    tip(floor));
            drawing.area(comesOff, drawing.frame().ground());
            drawing.stock(comesOff);
            drawing.chain(comesOff.subList(1, 4), Stroke.AIM, Role.LINE);
        });
    }

    /** From the face to the floor, in the recess. */
    private void depth(double floor) {
        double y = (upper + lower) / 2;
        Role role = picture.judged().isPresent() ? Role.ACCENT : Role.LINE;
        drawing.dimension(new Point(floor + 3, y), new Point(block.right(), y), role);
        drawing.down(block.right(), upper, lower, Stroke.THIN, Role.LINE);
        picture.judged().ifPresent(judged -> {
            Label label = Label.of(judged.figures(), TEXT, Role.ACCENT).bold().onGround();
            if (drawing.width(label) + 40 < block.right() - floor) {
                drawing.text(label, new Point((floor + block.right()) / 2, y), Anchor.CENTRE);
            } else {
                drawing.text(
                        label, new Point((floor + block.right()) / 2, y - drawing.height(label) - 6), Anchor.CENTRE);
            }
        });
    }
}
