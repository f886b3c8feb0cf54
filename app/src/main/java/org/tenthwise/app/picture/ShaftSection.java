package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;

/**
 * A size of metal: an outside diameter, seen from the side, or what is between two faces, cut open. The surface as it
 * is now, what the next cut takes off drawn large, the aim, and, while it is turned, its jaws and the insert. The free
 * end is at the right.
 */
final class ShaftSection {

    /** Pixels for the width of the tolerance. */
    private static final double TOLERANCE = 16;

    /** A neighbour is drawn up to so many times as large. */
    private static final double MOST_BESIDE = 1.7;

    private static final String DIAMETER = "\u2300";

    private final SizePicture picture;
    private final Drawing drawing;
    private final StripScale scale;
    private final SectionPlaces places;
    private final double left;
    private final double right;
    private final double top;
    private final double bottom;
    private final double middle;
    private final double half;
    private final double tolerance;
    private final SectionWalls walls;
    private final Optional<TurnedStretch> stretch;
    private final double edge;
    private final boolean isRound;
    private final String sign;

    ShaftSection(SizePicture picture, Drawing drawing, Box room, StripScale scale) {
        this.picture = picture;
        this.drawing = drawing;
        this.scale = scale;
        this.places = new SectionPlaces(picture);
        this.stretch = picture.stretch();
        double width = room.width();
        this.edge = room.left();
        this.isRound = picture.feature().filter(Feature::isRound).isPresent();
        this.sign = isRound ? DIAMETER : "";
        this.left = room.left() + width * (!isRound ? 0.08 : stretch.isEmpty() ? 0.28 : hasBack() ? 0.2 : 0.04);
        this.right = room.right() - (hasFront() ? Math.max(56, width * 0.2) : 52);
        this.top = room.top() + Math.max(drawing.lettered(40), 56);
        this.bottom = room.bottom() - drawing.lettered(14);
        this.tolerance = Math.min(TOLERANCE, (bottom - top) * 0.05);
        this.middle = (top + bottom) / 2;
        this.half = ((bottom - top) / 2 - 1.6 * tolerance)
                / stretch.map(of -> greatest(of) / size(of)).orElse(1.0);
        this.walls = new SectionWalls(picture, scale, places, left, right, middle, half, tolerance);
    }

    private boolean hasBack() {
        return stretch.flatMap(TurnedStretch::back).isPresent();
    }

    private boolean hasFront() {
        return stretch.flatMap(TurnedStretch::front).isPresent();
    }

    /** Crest or root of a thread, or the cylinder. */
    private double size(TurnedStretch of) {
        return isRoot(of) ? of.diameter() - 2 * of.thread() : of.diameter();
    }

    private boolean isRoot(TurnedStretch of) {
        return of.isRoot(Nanometres.of(Length.mean(
                picture.limits().stream().map(SizePicture.Sized::size).toList())));
    }

    /** Of it and of what is beside it, as far as that is drawn. */
    private double greatest(TurnedStretch of) {
        double beside = Math.max(of.back().orElse(0.0), of.front().orElse(0.0));
        return Math.max(of.diameter(), Math.min(beside, MOST_BESIDE * of.diameter()));
    }

    void draw() {
        double chuck = left - (left - 1) * 0.42;
        boolean placed = stretch.isPresent();
        if (isHeld() && !placed) {
            jaws(chuck);
        }
        List<Point> upper = surface(true, UnaryOperator.identity());
        List<Point> lower = surface(false, UnaryOperator.identity());
        if (placed) {
            beside(upper, lower);
        } else if (isRound) {
            collar(chuck);
        } else {
            block(upper, lower);
        }
        stock(upper, true);
        stock(lower, false);
        if (picture.cut().isEmpty()) {
            walls.limits(drawing, left + 2, right + (hasFront() ? -2 : 20));
        }
        boolean read = picture.judged().isPresent();
        drawing.chain(upper, read ? Stroke.READ : Stroke.OUTLINE, read ? Role.ACCENT : Role.LINE);
        drawing.chain(lower, read ? Stroke.READ : Stroke.OUTLINE, read ? Role.ACCENT : Role.LINE);
        drawing.line(upper.get(upper.size() - 1), lower.get(lower.size() - 1), Stroke.OUTLINE, Role.LINE);
        if (isRound) {
            drawing.across(middle, (placed ? edge : chuck) - (placed ? 0 : 14), right + 20, Stroke.CENTRE, Role.LINE);
        }
        if (isHeld()
                && stretch.flatMap(TurnedStretch::front)
                        .filter(of -> of > size(stretch.orElseThrow()))
                        .isEmpty()) {
            insert(upper.get(upper.size() - 1));
        }
        sizes();
    }

    /** What is not turned is drawn by itself. */
    private boolean isHeld() {
        return picture.isHeld() && picture.feature().filter(Feature::isTurned).isPresent();
    }

    /** Between two faces: metal, broken off where it goes on. */
    private void block(List<Point> upper, List<Point> lower) {
        List<Point> back = List.of(
                upper.get(0),
                new Point(left - 6, middle - half * 0.3),
                new Point(left + 6, middle + half * 0.3),
                lower.get(0));
        List<Point> ring = new ArrayList<>(upper);
        for (int i = lower.size() - 1; i >= 0; i--) {
            ring.add(lower.get(i));
        }
        ring.addAll(List.of(back.get(2), back.get(1)));
        drawing.metal(List.of(ring));
        drawing.chain(back, Stroke.THIN, Role.LINE);
    }

    private void collar(double chuck) {
        double collar = Math.min(half + 2.2 * tolerance, (bottom - top) / 2);
        drawing.ring(
                List.of(
                        new Point(chuck, middle - collar),
                        new Point(left, middle - collar),
                        new Point(left, middle + collar),
                        new Point(chuck, middle + collar)),
                Stroke.OUTLINE,
                Role.LINE);
    }

    /** What the part goes on with at either side, broken off; and the thread it is the crest or the root of. */
    private void beside(List<Point> upper, List<Point> lower) {
        TurnedStretch of = stretch.orElseThrow();
        of.back()
                .ifPresentOrElse(
                        back -> stub(back, left, edge + 4, upper.get(0), lower.get(0)),
                        () -> drawing.line(upper.get(0), lower.get(0), Stroke.OUTLINE, Role.LINE));
        of.front()
                .ifPresent(front ->
                        stub(front, right, right + 44, upper.get(upper.size() - 1), lower.get(lower.size() - 1)));
        if (of.thread() > 0) {
            boolean root = isRoot(of);
            double clear = 1.6 * tolerance;
            double other = root
                    ? Math.max(half * of.diameter() / size(of), half + clear)
                    : Math.min(half * (1 - 2 * of.thread() / of.diameter()), half - clear);
            for (int side : new int[] {-1, 1}) {
                drawing.across(
                        middle + side * other, left + 8, right - 8, root ? Stroke.OUTLINE : Stroke.THIN, Role.LINE);
            }
        }
    }

    private void stub(double diameter, double from, double to, Point upper, Point lower) {
        TurnedStretch of = stretch.orElseThrow();
        double exact = half * Math.min(diameter, MOST_BESIDE * of.diameter()) / size(of);
        double clear = 1.6 * tolerance;
        double out = diameter > size(of)
                ? Math.min(Math.max(exact, half + clear), (bottom - top) / 2)
                : Math.min(exact, half - clear);
        drawing.across(middle - out, from, to, Stroke.OUTLINE, Role.LINE);
        drawing.across(middle + out, from, to, Stroke.OUTLINE, Role.LINE);
        drawing.down(
                from, Math.min(upper.y(), middle - out), Math.max(lower.y(), middle + out), Stroke.OUTLINE, Role.LINE);
        double bend = middle - out * 0.5;
        drawing.chain(
                List.of(
                        new Point(to, middle - out),
                        new Point(to, bend - 8),
                        new Point(to - 4, bend - 3),
                        new Point(to + 4, bend + 3),
                        new Point(to, bend + 8),
                        new Point(to, middle + out)),
                Stroke.THIN,
                Role.LINE);
    }

    /** From the collar to the free end, through what was read, each size as {@code of} makes it. */
    private List<Point> surface(boolean above, UnaryOperator<Length> of) {
        List<Point> read = walls.read(above, of);
        Collections.reverse(read);
        List<Point> whole = new ArrayList<>();
        whole.add(new Point(left, read.get(0).y()));
        whole.addAll(read);
        whole.add(new Point(right, read.get(read.size() - 1).y()));
        return whole;
    }

    private void jaws(double chuck) {
        double step = (chuck - 1) * 0.55;
        for (int side : new int[] {-1, 1}) {
            double grip = middle + side * half * 0.72;
            double outer = middle + side * Math.min(half + 2.6 * tolerance, (bottom - top) / 2);
            double shelf = grip + (outer - grip) * 0.5;
            List<Point> jaw = List.of(
                    new Point(1, grip),
                    new Point(chuck, grip),
                    new Point(chuck, shelf),
                    new Point(1 + step, shelf),
                    new Point(1 + step, outer),
                    new Point(1, outer));
            drawing.area(jaw, Role.PAPER);
            drawing.ring(jaw, Stroke.NEIGHBOUR, Role.LINE);
            drawing.across(grip, 1, chuck, Stroke.OUTLINE, Role.LINE);
        }
    }

    private void stock(List<Point> surface, boolean above) {
        if (picture.cut().isEmpty()) {
            return;
        }
        List<Point> ring = SectionWalls.between(surface, surface(above, picture::afterCut));
        drawing.stock(ring);
        drawing.chain(ring.subList(surface.size(), ring.size()), Stroke.AIM, Role.LINE);
    }

    /** The insert at the free end, and the way it has to go. */
    private void insert(Point corner) {
        double x = corner.x() + 4;
        double y = corner.y() - 3;
        double size = Math.min(46, y - 2);
        List<Point> diamond = List.of(
                new Point(x, y),
                new Point(x + size * 0.1, y - size * 0.92),
                new Point(x + size, y - size),
                new Point(x + size * 0.9, y - size * 0.08));
        drawing.area(diamond, Role.PAPER);
        drawing.ring(diamond, Stroke.NEIGHBOUR, Role.LINE);
        drawing.circle(new Point(x + size / 2, y - size / 2), size * 0.14, Stroke.NEIGHBOUR, Role.LINE);
        picture.cut().ifPresent(cut -> {
            Point tip = new Point(x - 22, corner.y() - 5);
            Point tail = new Point(tip.x(), Math.max(2, tip.y() - 46));
            drawing.line(tail, tail.towards(tip, 0.7), Stroke.OUTLINE, Role.CUT);
            drawing.head(tail, tip, 16, 14, Role.CUT);
        });
    }

    private void sizes() {
        FreeRoom free = new FreeRoom(new Box(left + 2, middle - half, right - 4, middle + half));
        SectionLabels labels = new SectionLabels(drawing, free);
        for (SectionPlaces.Station station : places.stations()) {
            List.of(station.first(), station.second())
                    .forEach(reading -> reading.filter(column -> column.size().isPresent())
                            .ifPresent(column -> size(station, column, labels)));
        }
        labels.letter();
        picture.cut().ifPresent(cut -> aim(cut, free));
    }

    private void size(SectionPlaces.Station station, SizePicture.ReadingColumn column, SectionLabels labels) {
        double x = walls.x(station);
        boolean second = station.second().filter(column::equals).isPresent();
        if (!second) {
            drawing.dimension(
                    new Point(x, walls.y(walls.share(station.first()), true) + 3),
                    new Point(x, walls.y(walls.share(station.second().or(station::first)), false) - 3),
                    column.decides() ? Role.ACCENT : Role.LINE);
        }
        SizePicture.Sized size = column.size().orElseThrow();
        SizePicture.Sized diameter = new SizePicture.Sized(size.size(), sign + size.figures());
        int side = second ? 1 : -1;
        labels.size(
                diameter,
                column.decides(),
                new Point(x, middle + side * half * 0.42),
                new Point(x, middle + side * half * 0.75),
                new Point(x, middle + side * half * 0.2),
                new Point(x, middle - side * half * 0.42),
                new Point(x, middle - side * half * 0.75));
    }

    private void aim(SizePicture.Cut cut, FreeRoom free) {
        double x = left + (right - left) * 0.78;
        double share = scale.share(cut.aim().size());
        Point upper = new Point(x, walls.y(share, true));
        Point lower = new Point(x, walls.y(share, false));
        boolean clear = places.stations().stream().allMatch(station -> Math.abs(walls.x(station) - x) > 12)
                && free.isFree(upper, lower);
        Label label = Label.of(sign + cut.aim().figures(), 20, Role.INK).onGround();
        if (clear) {
            free.place(
                            drawing.width(label) + 8,
                            drawing.height(label) + 8,
                            List.of(
                                    new Point(x, middle + half * 0.42),
                                    new Point(x, middle + half * 0.75),
                                    new Point(x, middle - half * 0.75)))
                    .ifPresent(box -> {
                        drawing.dimension(upper, lower, Role.LINE);
                        drawing.text(label, box);
                    });
        }
    }
}
