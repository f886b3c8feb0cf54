package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.tenthwise.model.plan.Outline;
import org.tenthwise.model.quantity.Nanometres;

/** The depth of a thread: a few grooves cut open, the depth as a dimension from the crests to a root. */
final class GrooveSection {

    private static final double PITCHES = 3.4;
    /** Shares of a pitch: half of a crest, a flank, half of a root. */
    private static final double HALF_CREST = 0.15;

    private static final double FLANK = 0.2;
    private static final double SIDE = 26;
    private static final double STOCK = 8;

    private final SizePicture picture;
    private final Drawing drawing;
    private final double pitch;
    private final double depth;
    private final double crest;
    private final double left;
    private final double right;
    private final double bottom;

    GrooveSection(SizePicture picture, Outline.ThreadedLength thread, Drawing drawing, Box room) {
        this.picture = picture;
        this.drawing = drawing;
        double share = Nanometres.of(thread.depth()) / Nanometres.of(thread.pitch());
        this.left = room.left() + SIDE / 2;
        this.right = room.right() - SIDE;
        double most = (room.height() - RisingDimension.band(drawing) - 20) * 0.55;
        this.pitch = Math.min((right - left) / PITCHES, most / share);
        this.depth = pitch * share;
        this.crest = room.top() + Math.max(RisingDimension.band(drawing), (room.height() - 2 * depth) * 0.35);
        this.bottom = Math.min(room.bottom() - 10, crest + depth * 2.2);
    }

    void draw() {
        List<Point> surface = surface();
        List<Point> ring = new ArrayList<>(surface);
        List<Point> broken = List.of(
                new Point(right, bottom),
                new Point((left + right) / 2 + 8, bottom),
                new Point((left + right) / 2 + 3, bottom - 7),
                new Point((left + right) / 2 - 3, bottom + 7),
                new Point((left + right) / 2 - 8, bottom),
                new Point(left, bottom));
        ring.addAll(broken);
        drawing.metal(List.of(ring));
        drawing.chain(broken, Stroke.THIN, Role.LINE);
        drawing.chain(surface, Stroke.OUTLINE, Role.LINE);
        double middle = root();
        double half = pitch * (0.5 - HALF_CREST - FLANK);
        stock(middle, half);
        drawing.across(
                crest + depth,
                middle - half,
                middle + half,
                picture.judged().isPresent() ? Stroke.READ : Stroke.WALL,
                Role.ACCENT);
        dimension(middle);
    }

    /** The groove nearest to the middle. */
    private double root() {
        double half = Math.floor((right - left) / pitch / 2);
        return left + pitch * (half + 0.5);
    }

    private List<Point> surface() {
        List<Point> chain = new ArrayList<>(List.of(new Point(left, crest)));
        for (double start = left; start < right; start += pitch) {
            double at = start;
            DoubleStream.of(HALF_CREST, HALF_CREST + FLANK, 1 - HALF_CREST - FLANK, 1 - HALF_CREST)
                    .mapToObj(share -> new Point(
                            at + share * pitch, share > HALF_CREST && share < 1 - HALF_CREST ? crest + depth : crest))
                    .filter(point -> point.x() <= right)
                    .forEach(chain::add);
        }
        chain.add(new Point(right, chain.get(chain.size() - 1).y()));
        return chain;
    }

    private void stock(double middle, double half) {
        if (picture.cut().isPresent()) {
            List<Point> area = new Box(middle - half, crest + depth, middle + half, crest + depth + STOCK).corners();
            drawing.area(area, drawing.frame().ground());
            drawing.stock(area);
        }
    }

    private void dimension(double x) {
        drawing.across(crest, x - pitch / 2, x + pitch / 2, Stroke.THIN, Role.LINE);
        RisingDimension.draw(drawing, x, crest, crest + depth, crest, picture.judged());
    }
}
