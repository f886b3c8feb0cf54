package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;

/**
 * A bore or a pocket cut open: two walls, drawn through what was read, the limits as thin lines along them. Off the
 * limits' middle the walls are drawn large. The mouth is at the right.
 */
final class WallSection {

    /** Pixels for the width of the tolerance. */
    private static final double TOLERANCE = 22;

    private static final double SMALL_TEXT = 18;
    /** From one place for a word in the metal to the next. */
    private static final double ALONG = 6;
    /** How many depths are dimensioned. */
    private static final int MOST_DEPTHS = 3;
    /** Of a wall in nothing known: of the height. */
    private static final double THICKNESS = 0.16;
    /** Half a part is drawn up to so many radii of the bore; a thicker one is broken off. */
    private static final double MOST_OUTSIDE = 2.1;
    /** For what lies behind the bore: of the width. */
    private static final double BACK = 0.13;

    private static final double FRONT = 26;
    private static final double AIR = 12;
    /** With less of its own the section has no end view beside it. */
    private static final double LEAST_BESIDE_END_VIEW = 190;

    private final SizePicture picture;
    private final Drawing drawing;
    private final StripScale scale;
    private final SectionPlaces places;
    private final List<SectionPlaces.Station> depths;
    private final Optional<EndView> endView;
    private final double left;
    private final double right;
    private final double top;
    private final double bottom;
    private final double middle;
    private final double half;
    private final double thickness;
    private final SectionWalls walls;
    private final Optional<TurnedStretch> stretch;
    /** Where the bore ends. */
    private final double back;

    WallSection(SizePicture picture, Drawing drawing, Box room, StripScale scale) {
        this.picture = picture;
        this.drawing = drawing;
        this.scale = scale;
        this.places = new SectionPlaces(picture);
        this.depths = depths(places);
        this.endView = endView(room.width());
        this.left = room.left() + 4 + endView.map(view -> view.width() + AIR).orElse(0.0);
        this.right = room.right() - 34;
        this.top = room.top() + (picture.deciding().isPresent() ? drawing.lettered(34) : AIR);
        this.bottom = room.bottom() - drawing.lettered(34) * depths.size() - 8;
        double height = bottom - top;
        this.middle = (top + bottom) / 2;
        this.stretch = picture.stretch();
        double tolerance = Math.min(TOLERANCE, height * 0.07);
        this.half = stretch.map(of -> Math.min(
                        height / 2 / Math.min(MOST_OUTSIDE, of.outside() / of.diameter()),
                        height / 2 - 1.2 * tolerance - 8))
                .orElse(height * (0.5 - THICKNESS));
        this.thickness = height / 2 - half;
        this.back = stretch.map(of -> of.back().isPresent() ? left + BACK * (right - left) : left + 8)
                .orElse(left);
        this.walls = new SectionWalls(picture, scale, places, back, right, middle, half, tolerance);
    }

    private Optional<EndView> endView(double width) {
        return Optional.of(new EndView(drawing, places.angles()))
                .filter(view -> picture.feature().filter(Feature::isRound).isPresent()
                        && !places.angles().isEmpty()
                        && width - view.width() >= drawing.lettered(LEAST_BESIDE_END_VIEW));
    }

    private static List<SectionPlaces.Station> depths(SectionPlaces places) {
        List<SectionPlaces.Station> deep = places.stations().stream()
                .filter(station -> station.depth().isPresent())
                .toList();
        return deep.size() <= MOST_DEPTHS ? deep : List.of(deep.get(0), deep.get(deep.size() - 1));
    }

    void draw() {
        List<Point> upper = wall(true, UnaryOperator.identity());
        List<Point> lower = wall(false, UnaryOperator.identity());
        metal(upper, true);
        metal(lower, false);
        stock(true);
        stock(false);
        walls.limits(drawing, stretch.isPresent() ? back : left + 14, right + 18);
        if (picture.feature().filter(Feature::isRound).isPresent()) {
            drawing.across(middle, left, right + 18, Stroke.CENTRE, Role.LINE);
        }
        endView.ifPresent(view -> view.draw(left - AIR - view.width(), middle));
        FreeRoom free = new FreeRoom(new Box(left, top, right + 30, bottom));
        SectionLabels labels = new SectionLabels(drawing, free);
        depths.forEach(station ->
                free.take(new Point(walls.x(station), walls.y(0, false)), new Point(walls.x(station), bottom)));
        detail(free);
        angleWords(free);
        places.stations().forEach(station -> dimension(station, labels));
        labels.letter();
        depths();
    }

    /** From the mouth inwards, each size as {@code of} makes it. */
    private List<Point> wall(boolean above, UnaryOperator<Length> of) {
        List<Point> wall = walls.read(above, of);
        List<Point> whole = new ArrayList<>();
        whole.add(new Point(right, wall.get(0).y()));
        whole.addAll(wall);
        whole.add(new Point(
                stretch.isPresent() ? back : left + 10,
                wall.get(wall.size() - 1).y()));
        return whole;
    }

    private void metal(List<Point> wall, boolean above) {
        double outside = above ? top : bottom;
        Optional<Double> frontHalf = stretch.flatMap(TurnedStretch::front).map(this::halfOf);
        Optional<Double> backHalf = stretch.flatMap(TurnedStretch::back).map(this::halfOf);
        List<Point> inner = new ArrayList<>();
        frontHalf.ifPresent(half -> inner.addAll(List.of(at(right + FRONT, half, above), at(right, half, above))));
        inner.addAll(wall);
        backHalf.ifPresent(half -> inner.addAll(List.of(at(back, half, above), at(left + 10, half, above))));
        boolean endsInAir = stretch.isPresent() && backHalf.isEmpty();
        List<Point> broken = endsInAir
                ? List.of(inner.get(inner.size() - 1), new Point(back, outside))
                : broken(inner.get(inner.size() - 1).y(), outside);
        List<Point> ring = new ArrayList<>(inner);
        ring.addAll(broken.subList(1, broken.size()));
        ring.add(new Point(inner.get(0).x(), outside));
        drawing.metal(List.of(ring));
        drawing.chain(broken, endsInAir ? Stroke.OUTLINE : Stroke.THIN, Role.LINE);
        boolean thick = stretch.filter(of -> of.outside() / of.diameter() > MOST_OUTSIDE)
                .isPresent();
        drawing.chain(
                List.of(broken.get(broken.size() - 1), new Point(inner.get(0).x(), outside)),
                thick ? Stroke.THIN : Stroke.OUTLINE,
                Role.LINE);
        drawing.line(
                new Point(inner.get(0).x(), outside),
                inner.get(0),
                frontHalf.isPresent() ? Stroke.THIN : Stroke.OUTLINE,
                Role.LINE);
        drawing.chain(inner.subList(0, frontHalf.isPresent() ? 3 : 1), Stroke.OUTLINE, Role.LINE);
        backHalf.ifPresent(half -> {
            drawing.line(inner.get(inner.size() - 3), inner.get(inner.size() - 2), Stroke.OUTLINE, Role.LINE);
            if (half > 0) {
                drawing.line(inner.get(inner.size() - 2), inner.get(inner.size() - 1), Stroke.OUTLINE, Role.LINE);
            }
        });
        drawing.chain(wall, Stroke.WALL, Role.LINE);
    }

    private List<Point> broken(double inner, double outside) {
        return List.of(
                new Point(left + 10, inner),
                new Point(left + 2, inner + (outside - inner) * 0.35),
                new Point(left + 13, inner + (outside - inner) * 0.7),
                new Point(left + 6, outside));
    }

    private Point at(double x, double out, boolean above) {
        return new Point(x, above ? middle - out : middle + out);
    }

    /** Half of another diameter beside the bore, clear of the walls where it is another. */
    private double halfOf(double diameter) {
        TurnedStretch of = stretch.orElseThrow();
        double clear = walls.tolerance() + AIR;
        double exact = half * diameter / of.diameter();
        return diameter < of.diameter()
                ? Math.max(0, Math.min(exact, half - clear))
                : Math.min(Math.max(exact, half + clear * 0.6), (bottom - top) / 2 - 5);
    }

    /** What the next cut takes off the wall. */
    private void stock(boolean above) {
        if (picture.cut().isEmpty()) {
            return;
        }
        List<Point> wall = wall(above, UnaryOperator.identity());
        List<Point> ring = SectionWalls.between(wall, wall(above, picture::afterCut));
        drawing.area(ring, drawing.frame().ground());
        drawing.stock(ring);
        drawing.chain(wall, Stroke.WALL, Role.ACCENT);
        drawing.chain(ring.subList(wall.size(), ring.size()), Stroke.AIM, Role.LINE);
    }

    /** In the metal, as far in as nothing else stands there; in the bore, before its floor. */
    private void angleWords(FreeRoom free) {
        for (int i = 0; i < places.angles().size(); i++) {
            Label label = Label.of(places.angles().get(i).toPlainString() + "°", SMALL_TEXT, Role.INK)
                    .onGround();
            boolean inWall = hasRoomInWall(i == 0, drawing.height(label));
            double y = angleAt(i == 0, drawing.height(label));
            double start = inWall ? left + 22 : Math.max(left + 22, back + AIR);
            double first = start + drawing.width(label) / 2;
            free.place(
                            drawing.width(label) + 8,
                            drawing.height(label) + 6,
                            DoubleStream.iterate(first, x -> x < right, x -> x + ALONG)
                                    .filter(x -> isClearOfDimensions(x, drawing.width(label) / 2 + ALONG))
                                    .mapToObj(x -> new Point(x, y)))
                    .ifPresent(box -> drawing.text(label, box));
        }
    }

    private boolean isClearOfDimensions(double x, double clear) {
        return places.stations().stream().noneMatch(station -> Math.abs(walls.x(station) - x) < clear);
    }

    /** In the wall where it is thick enough, otherwise beside it in the bore. */
    private double angleAt(boolean above, double height) {
        double edge = above ? top : bottom;
        double inside = walls.y(-0.7, above) + (above ? 1 : -1) * (height / 2 + AIR / 2);
        return hasRoomInWall(above, height) ? (edge + walls.y(0.7, above)) / 2 : inside;
    }

    private boolean hasRoomInWall(boolean above, double height) {
        return Math.abs(walls.y(0.7, above) - (above ? top : bottom)) >= height + AIR;
    }

    private void dimension(SectionPlaces.Station station, SectionLabels labels) {
        Optional<SizePicture.ReadingColumn> first = walls.reading(station, true);
        Optional<SizePicture.ReadingColumn> second =
                places.angles().isEmpty() ? Optional.empty() : walls.reading(station, false);
        if (first.isEmpty() && second.isEmpty()) {
            return;
        }
        double x = walls.x(station);
        double upper = walls.y(walls.share(first.or(() -> second)), true);
        double lower = walls.y(walls.share(second.or(() -> first)), false);
        boolean decides = first.filter(SizePicture.ReadingColumn::decides).isPresent()
                || second.filter(SizePicture.ReadingColumn::decides).isPresent();
        drawing.dimension(new Point(x, upper + 2), new Point(x, lower - 2), decides ? Role.ACCENT : Role.LINE);
        first.ifPresent(column -> size(column, x, -half * 0.42, labels));
        second.ifPresent(column -> size(column, x, half * 0.42, labels));
    }

    /** @param quarter from the middle line towards its wall */
    private void size(SizePicture.ReadingColumn column, double x, double quarter, SectionLabels labels) {
        labels.size(
                column.size().orElseThrow(),
                column.decides(),
                new Point(x, middle + quarter),
                new Point(x, middle + quarter * 1.7),
                new Point(x, middle + quarter * 0.5),
                new Point(x, middle));
    }

    /** From the mouth to each depth, the nearest one first, every figure beside the lines that go on to the next. */
    private void depths() {
        if (depths.isEmpty()) {
            return;
        }
        double apart = drawing.lettered(34);
        double first = bottom + drawing.lettered(22);
        FreeRoom free = new FreeRoom(new Box(left - 4, bottom, right + 34, first + apart * depths.size()));
        for (int i = 0; i < depths.size(); i++) {
            Point end = new Point(walls.x(depths.get(i)), first + apart * i + 8);
            drawing.line(new Point(end.x(), walls.y(0, false)), end, Stroke.THIN, Role.LINE);
            free.take(new Point(end.x(), bottom), end);
        }
        Point mouthEnd = new Point(right, first + apart * (depths.size() - 1) + 8);
        drawing.line(new Point(right, bottom), mouthEnd, Stroke.THIN, Role.LINE);
        free.take(new Point(right, bottom), mouthEnd);
        for (int i = 0; i < depths.size(); i++) {
            depth(depths.get(i), first + apart * i, free);
        }
    }

    private void depth(SectionPlaces.Station station, double level, FreeRoom free) {
        double x = walls.x(station);
        List<Point> line = drawing.dimension(new Point(x, level), new Point(right, level), Role.LINE)
                .points();
        Label label = Label.of(station.depth().orElseThrow().figures(), SMALL_TEXT, Role.INK)
                .onGround();
        double width = drawing.width(label) + 6;
        Point between = new Point((x + right) / 2, level);
        Point before = new Point(line.get(0).x() - width / 2 - 4, level);
        Point behind = new Point(line.get(1).x() + width / 2 + 4, level);
        boolean fits = right - x > width + 34;
        free.place(
                        width,
                        drawing.height(label),
                        fits ? List.of(between) : List.of(before, behind, before.plus(-24, 0), between))
                .ifPresent(box -> drawing.text(label, new Point(box.centreX(), level), Anchor.CENTRE));
    }

    /** A ring around the spot of the wall that the strip magnifies, which no figure may touch. */
    private void detail(FreeRoom free) {
        places.stations().forEach(station -> {
            boolean above =
                    station.first().filter(SizePicture.ReadingColumn::decides).isPresent();
            boolean below =
                    station.second().filter(SizePicture.ReadingColumn::decides).isPresent();
            if (above || below) {
                double share = walls.share(above ? station.first() : station.second());
                mark(new Point(walls.x(station), walls.y(share, above)), above, free);
            }
        });
    }

    /** Its letter stands over the upper wall, and beside the ring in the lower one. */
    private void mark(Point spot, boolean above, FreeRoom free) {
        double radius = Math.min(24, thickness * 0.8);
        drawing.circle(spot, radius, Stroke.NEIGHBOUR, Role.ACCENT);
        free.take(new Shape.Circle(spot, radius));
        Label letter = Label.of(SizePicture.DETAIL, SizePicture.DETAIL_TEXT, Role.ACCENT)
                .bold();
        double width = drawing.width(letter);
        if (above) {
            Point place = new Point(
                    Math.min(spot.x() + radius + width, right + 30 - width), top - drawing.height(letter) / 2 - 6);
            Point end = place.plus(-width / 2 - 3, 4);
            Point start = spot.towards(end, radius / spot.distanceTo(end));
            drawing.line(start, end, Stroke.NEIGHBOUR, Role.ACCENT);
            free.take(start, end);
            drawing.text(letter, place, Anchor.CENTRE);
        } else {
            double aside = radius + width / 2 + 5;
            double y = (bottom + walls.y(0.7, false)) / 2;
            free.place(
                            width + 8,
                            drawing.height(letter),
                            DoubleStream.iterate(aside, x -> x < right - left, x -> x + ALONG)
                                    .boxed()
                                    .flatMap(x -> Stream.of(new Point(spot.x() + x, y), new Point(spot.x() - x, y))))
                    .ifPresent(box -> drawing.text(letter.onGround(), box));
        }
    }
}
