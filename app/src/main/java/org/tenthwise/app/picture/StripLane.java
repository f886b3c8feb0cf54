package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.Limit;

/**
 * The sizes at the right of a strip, with the lines that lead to them; the distance as a dimension, the next cut, its
 * aim. What cannot stand where it belongs is left out, and then all that counts less.
 */
final class StripLane {

    private static final double SIZE_TEXT = 24;
    private static final double LEAST_SIZE_TEXT = 18;
    private static final double TEXT = 20;
    private static final double SMALL_TEXT = 18;
    /** For the dimension line and what leads to the sizes, left of them. */
    private static final double GUTTER = 30;

    private static final double GAP = 5;
    /** How far the heads of a short dimension reach beyond it. */
    private static final double OUTSIDE = 24;

    private static final double STEP = 2;
    private static final double LINE = 23;

    private final SizePicture picture;
    private final Drawing drawing;
    private final StripScale scale;
    private final Box whole;
    private final Box lane;
    private final FreeRoom free;
    private final double top;
    private final double bottom;
    private boolean complete = true;

    /**
     * @param whole from the strip to the right edge
     * @param free room in {@code whole}; what is drawn here is taken from it
     * @param top of the strip; {@code bottom} of it
     */
    StripLane(
            SizePicture picture,
            Drawing drawing,
            StripScale scale,
            Box whole,
            FreeRoom free,
            double top,
            double bottom) {
        this.picture = picture;
        this.drawing = drawing;
        this.scale = scale;
        this.whole = whole;
        this.lane = new Box(whole.left() + gutter(drawing), whole.top(), whole.right(), whole.bottom());
        this.free = free;
        this.top = top;
        this.bottom = bottom;
    }

    private static double gutter(Drawing drawing) {
        return drawing.ruled(GUTTER);
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
        return gutter(drawing) + widest + 4;
    }

    void draw() {
        List<LaneSizes.Placed> sizes = new LaneSizes(drawing, lane).place(wanted());
        sizes.forEach(this::size);
        boolean atLines = sizes.stream().noneMatch(size -> size.stand() == LaneSizes.Stand.LED);
        if (atLines) {
            picture.cut().ifPresentOrElse(this::cut, this::distance);
        } else {
            complete = false;
        }
        picture.cut().filter(cut -> complete).ifPresent(cut -> aim(cut.aim()));
        if (complete) {
            beyond();
        }
    }

    /** Limits on the outer side of their lines, the size judged on the side away from the nearer limit. */
    private List<LaneSizes.Wanted> wanted() {
        List<LaneSizes.Wanted> wanted = new ArrayList<>();
        double text = LaneSizes.letters(
                drawing,
                lane.height(),
                picture.limits().size() + picture.judged().stream().toList().size(),
                SIZE_TEXT,
                Math.min(
                        SIZE_TEXT, LEAST_SIZE_TEXT / Math.min(1, drawing.frame().textScale())));
        picture.upper().ifPresent(limit -> wanted.add(wanted(limit, text, Role.INK, true)));
        picture.lower().ifPresent(limit -> wanted.add(wanted(limit, text, Role.INK, false)));
        picture.judged().ifPresent(judged -> {
            boolean above = picture.distance()
                    .map(distance -> distance.from() == Limit.LOWER == isInside(judged, distance.from()))
                    .orElse(true);
            wanted.add(wanted(judged, text, Role.ACCENT, above));
        });
        return wanted;
    }

    private LaneSizes.Wanted wanted(SizePicture.Sized sized, double text, Role role, boolean above) {
        return new LaneSizes.Wanted(
                Label.of(sized.figures(), text, role).bold(),
                sized.size(),
                scale.clamped(sized.size()),
                above
                        ? List.of(LaneSizes.Stand.ABOVE, LaneSizes.Stand.ON, LaneSizes.Stand.BELOW)
                        : List.of(LaneSizes.Stand.BELOW, LaneSizes.Stand.ON, LaneSizes.Stand.ABOVE));
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

    /** A size with its line, which goes all the way where the size stands over or under it. */
    private void size(LaneSizes.Placed placed) {
        Box box = placed.box();
        Role role = placed.wanted().label().role();
        Stroke stroke = role == Role.ACCENT ? Stroke.NEIGHBOUR : Stroke.OUTLINE;
        Point strip = new Point(whole.left(), placed.wanted().line());
        switch (placed.stand()) {
            case ABOVE, BELOW -> lead(strip, new Point(whole.right(), strip.y()), stroke, role);
            case ON -> lead(strip, new Point(box.left() - GAP, strip.y()), stroke, role);
            case LED -> {
                Point bend = new Point(lane.left() - GAP, box.centreY());
                lead(strip, bend, Stroke.THIN, role);
                lead(bend, new Point(Math.max(bend.x(), box.left() - GAP), bend.y()), Stroke.THIN, role);
            }
        }
        free.take(box.grown(2));
        drawing.text(placed.wanted().label(), box, Anchor.RIGHT);
    }

    private void lead(Point from, Point to, Stroke stroke, Role role) {
        drawing.line(from, to, stroke, role);
        free.take(new Shape.Polyline(List.of(from, to), false).bounds().grown(2));
    }

    private void distance() {
        picture.distance().filter(distance -> distance.length().signum() > 0).ifPresent(this::distance);
    }

    private void distance(SizePicture.Distance distance) {
        SizePicture.Sized limit = (distance.from() == Limit.UPPER ? picture.upper() : picture.lower()).orElseThrow();
        double from = scale.clamped(picture.judged().orElseThrow().size());
        double to = scale.clamped(limit.size());
        Label label = Label.of(distance.figures(), TEXT, Role.INK);
        dimensioned(from, to, List.of(label), Role.LINE);
    }

    /** From the size judged to what the cut makes of it. */
    private void cut(SizePicture.Cut cut) {
        Length judged = picture.judged().orElseThrow().size();
        Label length = Label.of(cut.figures(), TEXT, Role.CUT).bold();
        Label words = Label.of(picture.said().nextCut(), SMALL_TEXT, Role.CUT);
        dimensioned(scale.clamped(judged), scale.clamped(picture.afterCut(judged)), List.of(words, length), Role.CUT);
    }

    /**
     * A dimension with its figures beside it, the last of {@code lines} where there is no room for all: between its
     * ends where they are that far apart, otherwise at the end of a head that comes from outside.
     */
    private void dimensioned(double from, double to, List<Label> lines, Role role) {
        List<Label> last = lines.subList(lines.size() - 1, lines.size());
        double upper = Math.min(from, to);
        double lower = Math.max(from, to);
        double x = (whole.left() + lane.left()) / 2;
        complete = Stream.of(lines, last).anyMatch(said -> {
                    double half = height(said) / 2;
                    boolean written = write(said, upwards((upper + lower) / 2, upper + half, lower - half))
                            .isPresent();
                    if (written) {
                        free.take(new Box(x - 5, upper, x + 5, lower));
                        drawing.dimension(new Point(x, from), new Point(x, to), role);
                    }
                    return written;
                })
                || Stream.of(lines, last).anyMatch(said -> fromOutside(said, upper, lower, role));
    }

    private boolean fromOutside(List<Label> lines, double upper, double lower, Role role) {
        double heads = drawing.ruled(OUTSIDE);
        double half = height(lines) / 2;
        if (upper - heads <= whole.top() || lower + heads >= whole.bottom()) {
            return false;
        }
        Optional<Box> written = write(
                lines,
                DoubleStream.iterate(half, off -> off < whole.height(), off -> off + STEP)
                        .flatMap(off -> DoubleStream.of(upper - off, lower + off)));
        written.ifPresent(box -> {
            double x = (whole.left() + lane.left()) / 2;
            drawing.dimensionFromOutside(new Point(x, upper), new Point(x, lower), role);
            double end = box.centreY() < upper
                    ? Math.min(box.centreY(), upper - heads)
                    : Math.max(box.centreY(), lower + heads);
            drawing.down(x, end < upper ? upper : lower, end, Stroke.THIN, role);
            free.take(new Box(x - 5, Math.min(end, upper - heads), x + 5, Math.max(end, lower + heads)));
        });
        return written.isPresent();
    }

    /** Heights between two, the nearest to {@code from} first. */
    private static DoubleStream upwards(double from, double least, double most) {
        return DoubleStream.iterate(0, off -> off <= (most - least) / 2, off -> off + STEP)
                .flatMap(off -> DoubleStream.of(from - off, from + off));
    }

    private double height(List<Label> lines) {
        return lines.size() == 1 ? drawing.height(lines.get(0)) + 4 : lines.size() * drawing.lettered(LINE);
    }

    private Optional<Box> write(List<Label> lines, DoubleStream middles) {
        double height = height(lines);
        double width = lines.stream().mapToDouble(drawing::width).max().orElse(0);
        Optional<Box> found = free.place(width, height, middles.mapToObj(y -> new Point(lane.left() + width / 2, y)));
        found.ifPresent(box -> {
            for (int i = 0; i < lines.size(); i++) {
                double y = box.top() + (i + 0.5) * height / lines.size();
                drawing.text(lines.get(i), new Point(box.left(), y), Anchor.LEFT);
            }
        });
        return found;
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
        Optional<Box> found = free.place(drawing.width(label), height, beside);
        found.ifPresent(box -> drawing.text(label, box, Anchor.RIGHT));
        complete = found.isPresent();
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
        if (wanted && !words.isEmpty() && width <= whole.width()) {
            free.place(width, drawing.lettered(20), List.of(new Point(lane.right() - width / 2, y)))
                    .ifPresent(box -> drawing.text(label, box, Anchor.RIGHT));
        }
    }
}
