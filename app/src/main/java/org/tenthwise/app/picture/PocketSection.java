package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Outline;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;

/**
 * The depth of a pocket: the wall it is milled into, cut open along the axis, the depth as a dimension to the floor.
 */
final class PocketSection {

    private static final double SIDE = 24;
    private static final double STOCK = 8;
    /** Of the length shown: what is shown of the part at either side of the pocket. */
    private static final double BESIDE = 0.22;
    /** Under a solid part so many depths of metal are shown. */
    private static final double SOLID = 2.5;

    private final SizePicture picture;
    private final Drawing drawing;
    private final double left;
    private final double right;
    private final double from;
    private final double to;
    private final double top;
    private final double floor;
    private final double under;
    private final boolean hollow;

    PocketSection(SizePicture picture, SizePicture.Beside.PocketFloor beside, Drawing drawing, Box room) {
        this.picture = picture;
        this.drawing = drawing;
        this.left = room.left() + SIDE / 2;
        this.right = room.right() - SIDE;
        Outline.Pocket pocket = beside.pocket();
        double length = Nanometres.of(pocket.to().minus(pocket.from()));
        double depth = Nanometres.of(Length.mean(
                picture.limits().stream().map(SizePicture.Sized::size).toList()));
        Optional<Double> wall =
                wall(beside.outline(), pocket.from().plus(pocket.to()).half());
        this.hollow = wall.isPresent();
        double thick = Math.max(wall.orElse(SOLID * depth), depth * 1.15);
        double along = (right - left) / (length * (1 + 2 * BESIDE));
        double high = room.height() - RisingDimension.band(drawing) - 20;
        double scale = Math.min(along, high / thick);
        double stretched = Math.min(along, scale * 1.6);
        double middle = (left + right) / 2;
        this.from = middle - stretched * length / 2;
        this.to = middle + stretched * length / 2;
        this.top = room.top() + RisingDimension.band(drawing) + (high - scale * thick) * 0.4;
        this.floor = top + scale * depth;
        this.under = top + scale * thick;
    }

    /** Between outside and bore; absent where the part is solid. */
    private static Optional<Double> wall(Outline outline, Length at) {
        return TurnedStretch.diameterAt(outline.inside(), at)
                .filter(bore -> bore > 0)
                .flatMap(bore -> TurnedStretch.diameterAt(outline.outside(), at).map(outside -> (outside - bore) / 2));
    }

    void draw() {
        List<Point> surface = List.of(
                new Point(left, top),
                new Point(from, top),
                new Point(from, floor),
                new Point(to, floor),
                new Point(to, top),
                new Point(right, top));
        List<Point> ring = new ArrayList<>(surface);
        ring.addAll(List.of(new Point(right, under), new Point(left, under)));
        drawing.metal(List.of(ring));
        drawing.chain(surface, Stroke.OUTLINE, Role.LINE);
        drawing.across(under, left, right, hollow ? Stroke.OUTLINE : Stroke.THIN, Role.LINE);
        breakLine(left);
        breakLine(right);
        if (picture.cut().isPresent()) {
            List<Point> area = new Box(from, floor, to, floor + STOCK).corners();
            drawing.area(area, drawing.frame().ground());
            drawing.stock(area);
            drawing.across(floor + STOCK, from, to, Stroke.AIM, Role.LINE);
        }
        drawing.across(floor, from, to, picture.judged().isPresent() ? Stroke.READ : Stroke.WALL, Role.ACCENT);
        dimension();
    }

    private void breakLine(double x) {
        double middle = (top + under) / 2;
        drawing.chain(
                List.of(
                        new Point(x, top),
                        new Point(x, middle - 8),
                        new Point(x - 6, middle - 3),
                        new Point(x + 6, middle + 3),
                        new Point(x, middle + 8),
                        new Point(x, under)),
                Stroke.THIN,
                Role.LINE);
    }

    private void dimension() {
        drawing.across(top, from, to, Stroke.THIN, Role.LINE);
        RisingDimension.draw(drawing, (from + to) / 2, top, floor, top, picture.judged());
    }
}
