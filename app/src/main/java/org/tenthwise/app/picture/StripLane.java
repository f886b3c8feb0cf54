package org.tenthwise.app.picture;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.Limit;

/** The sizes at the right of a strip: limits, the size judged, the distance as a dimension, the next cut, its aim. */
final class StripLane {

    private static final double SIZE_TEXT = 24;
    private static final double TEXT = 20;
    private static final double SMALL_TEXT = 18;
    /** For the dimension line, left of the figures. */
    private static final double DIMENSION = 30;

    /** How far the heads of a short dimension reach beyond it. */
    private static final double OUTSIDE = 24;

    private final SizePicture picture;
    private final Drawing drawing;
    private final StripScale scale;
    private final Box lane;
    private final Box words;
    private final FreeRoom free;
    private final double top;
    private final double bottom;
    private boolean complete = true;

    /** @param words what already stands over the strip */
    StripLane(SizePicture picture, Drawing drawing, StripScale scale, Box lane, double top, double bottom, Box words) {
        this.picture = picture;
        this.drawing = drawing;
        this.scale = scale;
        this.lane = new Box(lane.left() + dimension(drawing), lane.top(), lane.right(), lane.bottom());
        this.free = new FreeRoom(new Box(lane.left(), lane.top(), lane.right(), lane.bottom()));
        this.words = words;
        free.take(words.grown(4));
        this.top = top;
        this.bottom = bottom;
    }

    private static double dimension(Drawing drawing) {
        return drawing.ruled(DIMENSION);
    }

    static double width(SizePicture picture, Drawing drawing) {
        double widest = Stream.of(
                        Stream.of(picture.lower(), picture.upper(), picture.judged())
                                .flatMap(Optional::stream)
                                .map(sized -> Label.of(sized.figures(), SIZE_TEXT, Role.INK)
                                        .bold()),
                        picture.distance().stream().map(distance -> Label.of(distance.figures(), TEXT, Role.INK)),
                        picture.cut().stream()
                                .flatMap(cut -> Stream.of(
                                        Label.of(cut.figures(), TEXT, Role.CUT).bold(),
                                        Label.of(picture.said().nextCut(), SMALL_TEXT, Role.CUT),
                                        Label.of(cut.aim().figures(), SMALL_TEXT, Role.INK))))
                .flatMap(labels -> labels)
                .mapToDouble(drawing::width)
                .max()
                .orElse(0);
        return dimension(drawing) + widest + 4;
    }

    void draw() {
        StripLane tried = new StripLane(
                picture,
                drawing.rehearsal(),
                scale,
                new Box(lane.left() - dimension(drawing), lane.top(), lane.right(), lane.bottom()),
                top,
                bottom,
                words);
        tried.draw(true);
        draw(tried.complete);
    }

    /** @param figureOfDistance left away where it would take the place of a size: it is in the sentence as well */
    private void draw(boolean figureOfDistance) {
        picture.judged().ifPresent(judged -> {
            double y = scale.clamped(judged.size());
            drawing.across(y, lane.left() - dimension(drawing), lane.right(), Stroke.NEIGHBOUR, Role.ACCENT);
        });
        lines().forEach(y -> free.take(line(y)));
        boolean out = picture.distance().isPresent()
                && !isInside(
                        picture.judged().orElseThrow(), picture.distance().get().from());
        if (out) {
            picture.judged().ifPresent(this::judged);
            distance(figureOfDistance);
            limits();
        } else {
            limits();
            picture.judged().ifPresent(this::judged);
            distance(figureOfDistance);
        }
        picture.cut().ifPresent(this::cut);
        beyond();
    }

    /** Heights of the limits and of the size judged. */
    private DoubleStream lines() {
        return Stream.concat(
                        picture.limits().stream().map(limit -> scale.y(limit.size())),
                        picture.judged().map(judged -> scale.clamped(judged.size())).stream())
                .mapToDouble(y -> y);
    }

    private Box line(double y) {
        return new Box(lane.left(), y - 2, lane.right(), y + 2);
    }

    /** On the outer side of its line. */
    private void limits() {
        picture.upper().ifPresent(limit -> put(sizeLabel(limit.figures(), Role.INK), scale.y(limit.size()), true));
        picture.lower().ifPresent(limit -> put(sizeLabel(limit.figures(), Role.INK), scale.y(limit.size()), false));
    }

    /** Beside its line, on the side away from the nearer limit where there is room. */
    private void judged(SizePicture.Sized judged) {
        boolean above = picture.distance()
                .map(distance -> distance.from() == Limit.LOWER == isInside(judged, distance.from()))
                .orElse(true);
        put(sizeLabel(judged.figures(), Role.ACCENT), scale.clamped(judged.size()), above);
    }

    private boolean isInside(SizePicture.Sized judged, Limit limit) {
        return limit == Limit.UPPER
                ? picture.upper()
                        .filter(upper -> judged.size().isAbove(upper.size()))
                        .isEmpty()
                : picture.lower()
                        .filter(lower -> judged.size().isBelow(lower.size()))
                        .isEmpty();
    }

    private static Label sizeLabel(String figures, Role role) {
        return Label.of(figures, SIZE_TEXT, role).bold();
    }

    /**
     * At the line on the side asked for, else on the other, else in the line, else as near as can be with no other line
     * in between.
     */
    private void put(Label label, double line, boolean above) {
        double height = drawing.height(label) + 2;
        double width = drawing.width(label);
        double off = height / 2 + 6 * Math.max(0.7, drawing.frame().textScale());
        double x = lane.right() - width / 2;
        double first = above ? line - off : line + off;
        double second = above ? line + off : line - off;
        Optional<Box> place = free.place(width, height, List.of(new Point(x, first), new Point(x, second)))
                .or(() -> free.placeOver(line(line), width, height + 4, new Point(x, line)))
                .or(() -> free.nearest(width, height, new Point(x, first), at -> lines().noneMatch(
                                other -> other != line && (other - at.y()) * (other - line) < 0)));
        complete &= place.isPresent();
        place.ifPresent(box -> {
            free.take(box.grown(2));
            drawing.text(box.meets(line(line)) ? label.onGround() : label, box, Anchor.RIGHT);
        });
    }

    private Optional<Box> place(double width, double height, List<Point> wanted, Point near) {
        Optional<Box> box = free.place(width, height, wanted).or(() -> free.nearest(width, height, near));
        box.ifPresent(taken -> free.take(taken.grown(2)));
        return box;
    }

    private void distance(boolean figure) {
        picture.distance()
                .filter(distance -> picture.cut().isEmpty() && distance.length().signum() > 0)
                .ifPresent(distance -> distance(distance, figure));
    }

    private void distance(SizePicture.Distance distance, boolean figure) {
        SizePicture.Sized limit = (distance.from() == Limit.UPPER ? picture.upper() : picture.lower()).orElseThrow();
        double from = scale.clamped(picture.judged().orElseThrow().size());
        double to = scale.y(limit.size());
        double x = lane.left() - dimension(drawing) / 2;
        double heads = Math.abs(from - to) < 1.2 * OUTSIDE ? drawing.ruled(OUTSIDE) : 0;
        if (Math.abs(from - to) > 3
                && Math.min(from, to) - heads > lane.top()
                && Math.max(from, to) + heads < lane.bottom()) {
            drawing.dimension(new Point(x, from), new Point(x, to), Role.LINE);
        }
        if (!figure) {
            return;
        }
        Label label = Label.of(distance.figures(), TEXT, Role.INK);
        double height = drawing.height(label) + 6;
        Point middle = new Point(lane.left() + drawing.width(label) / 2, (from + to) / 2);
        free.place(drawing.width(label), height, List.of(middle))
                .or(() -> free.nearest(
                        drawing.width(label), height, middle, place -> isOnOneSide(place.y(), from, height / 2)))
                .ifPresent(box -> drawing.text(label, box, Anchor.LEFT));
    }

    /**
     * Whether no limit lies between two heights: on the other side of one, a figure would be read as a distance of
     * something else.
     */
    private boolean isOnOneSide(double y, double from, double clear) {
        return picture.limits().stream()
                .mapToDouble(limit -> scale.y(limit.size()))
                .allMatch(line -> y < from ? line < y - clear || line >= from : line > y + clear || line <= from);
    }

    /** From the size judged to what the cut makes of it. */
    private void cut(SizePicture.Cut cut) {
        Length judged = picture.judged().orElseThrow().size();
        double from = scale.clamped(judged);
        double to = scale.clamped(picture.afterCut(judged));
        double x = lane.left() - dimension(drawing) / 2;
        drawing.dimension(new Point(x, from), new Point(x, to), Role.CUT);
        Label length = Label.of(cut.figures(), TEXT, Role.CUT).bold();
        Label words = Label.of(picture.said().nextCut(), SMALL_TEXT, Role.CUT);
        double width = Math.max(drawing.width(length), drawing.width(words));
        double line = drawing.lettered(23);
        Point middle = new Point(lane.right() - width / 2, (from + to) / 2);
        Optional<Box> both = place(width, 2 * line, List.of(middle), middle);
        both.ifPresent(box -> {
            drawing.text(words, new Point(box.right(), box.top() + line / 2), Anchor.RIGHT);
            drawing.text(length, new Point(box.right(), box.top() + line * 1.5), Anchor.RIGHT);
        });
        if (both.isEmpty()) {
            Point right = new Point(lane.right() - drawing.width(length) / 2, middle.y());
            place(drawing.width(length), drawing.height(length) + 4, List.of(right), right)
                    .ifPresent(box -> drawing.text(length, box, Anchor.RIGHT));
        }
        aim(cut.aim());
    }

    /**
     * Beside its line, between the limits: a figure outside them would read as a size that is out. Left away where
     * there is no room.
     */
    private void aim(SizePicture.Sized aim) {
        Label label = Label.of(aim.figures(), SMALL_TEXT, Role.INK);
        double height = drawing.height(label) + 4;
        double line = scale.clamped(aim.size());
        double highest =
                picture.upper().map(limit -> scale.clamped(limit.size())).orElse(top) + height / 2;
        double lowest =
                picture.lower().map(limit -> scale.clamped(limit.size())).orElse(bottom) - height / 2;
        double x = lane.right() - drawing.width(label) / 2;
        List<Point> beside = Stream.of(line, line - height / 2, line + height / 2)
                .filter(y -> y >= highest && y <= lowest)
                .map(y -> new Point(x, y))
                .toList();
        free.place(drawing.width(label), height, beside).ifPresent(box -> drawing.text(label, box, Anchor.RIGHT));
    }

    /** What it means to lie beyond a limit, where there is still room for the words. */
    private void beyond() {
        picture.upper()
                .ifPresent(limit ->
                        words(picture.said().above(), top + drawing.lettered(8), scale.y(limit.size()) < bottom));
        picture.lower()
                .ifPresent(limit ->
                        words(picture.said().below(), bottom - drawing.lettered(8), scale.y(limit.size()) > top));
    }

    private void words(String words, double y, boolean wanted) {
        Label label = Label.of(words, SMALL_TEXT, Role.INK2);
        double width = drawing.width(label);
        if (wanted && !words.isEmpty() && width <= lane.right() - (lane.left() - dimension(drawing))) {
            free.place(width, drawing.lettered(20), List.of(new Point(lane.right() - width / 2, y)))
                    .ifPresent(box -> drawing.text(label, box, Anchor.RIGHT));
        }
    }
}
