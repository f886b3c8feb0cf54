package org.tenthwise.app.picture;

import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.app.text.Figures;
import org.tenthwise.model.quantity.Length;

/** The wall of a section magnified: one column a reading or a cut, limits, guard band, stock, and ticks at the side. */
final class Strip {

    /** From the end of the strip to a break line. */
    static final double BREAK = 7;

    private static final double TICKS = 18;
    private static final double SMALL_TEXT = 18;
    /** Lower than this there is no room for a scale either, nor for sizes at their lines. */
    private static final double BARE = 110;

    private final SizePicture picture;
    private final Drawing drawing;
    private final Box room;
    private final double left;
    private final double right;
    private final double top;
    private final double bottom;
    private final StripScale scale;
    private final boolean detail;
    private final StripLabels labels;
    private final List<SizePicture.ReadingColumn> columns;
    private final List<Box> boxes;

    /**
     * @param lane width for the sizes at the right
     * @param detail whether the section beside it marks the spot that is magnified
     */
    Strip(SizePicture picture, Drawing drawing, Box room, double lane, boolean detail) {
        this.detail = detail;
        this.picture = picture;
        this.drawing = drawing;
        this.room = room;
        this.left = room.left() + ticksWidth(drawing);
        this.right = room.right() - lane;
        this.top = room.top() + drawing.lettered(isBare() ? 8 : 30);
        StripColumns columns = new StripColumns(picture, drawing);
        this.columns = columns.shown(right - left);
        this.labels = new StripLabels(this.columns, drawing, room);
        this.bottom = room.bottom() - labels.height();
        this.boxes = columns.boxes(new Box(left, top, right, bottom));
        this.scale = new StripScale(picture, top, bottom);
    }

    static double ticksWidth(Drawing drawing) {
        return drawing.ruled(TICKS);
    }

    StripScale scale() {
        return scale;
    }

    void draw() {
        zone();
        for (int i = 0; i < boxes.size(); i++) {
            column(columns.get(i), boxes.get(i));
        }
        mate();
        guardBands();
        for (int i = 1; i < boxes.size(); i++) {
            drawing.down(boxes.get(i).left(), top, bottom, Stroke.RULE, Role.RULE);
        }
        drawing.down(left, top, bottom, Stroke.NEIGHBOUR, Role.INK2);
        drawing.down(right, top, bottom, Stroke.NEIGHBOUR, Role.INK2);
        if (!isBare()) {
            ticks();
        }
        limits();
        surfaces();
        new ColumnFigures(picture, drawing, scale, new Box(left, top, right, bottom), lines()).draw(columns, boxes);
        Box lane = new Box(right, room.top(), room.right(), room.bottom());
        FreeRoom beside = new FreeRoom(lane);
        labels.draw(boxes, bottom, beside);
        new StripLane(picture, drawing, scale, lane, beside, top, bottom).draw();
        if (!isBare()) {
            scaleWords(beside);
        }
    }

    /**
     * What one tick is, after the letter of the spot on the section that the strip magnifies: over the strip where the
     * sizes beside it leave room, otherwise under them.
     */
    private void scaleWords(FreeRoom beside) {
        Label letter = Label.of(detail ? SizePicture.DETAIL + " " : "", SizePicture.DETAIL_TEXT, Role.ACCENT)
                .bold();
        Label words = Label.of(
                picture.said().scale().apply(Figures.number(scale.step(), picture.unit())), SMALL_TEXT, Role.INK2);
        double width = drawing.width(letter) + drawing.width(words);
        double half = drawing.lettered(11);
        Point over = new Point(Math.max(0, Math.min(room.left(), room.right() - width)), room.top() + half);
        Box reach = new Box(right, room.top(), over.x() + width, room.top() + 2 * half);
        boolean fits = reach.width() <= 0 || beside.isFree(reach);
        Point start = fits ? over : new Point(room.right() - width, room.bottom() - half);
        if (fits || beside.isFree(new Box(start.x(), start.y() - half, room.right(), room.bottom()))) {
            Box box = drawing.text(letter, start, Anchor.LEFT);
            drawing.text(words, new Point(box.right(), start.y()), Anchor.LEFT);
        }
    }

    private void zone() {
        double from = picture.upper().map(limit -> scale.clamped(limit.size())).orElse(top);
        double to = picture.lower().map(limit -> scale.clamped(limit.size())).orElse(bottom);
        drawing.area(new Box(left, from, right, to).corners(), Role.ZONE);
    }

    private void column(SizePicture.ReadingColumn column, Box box) {
        if (column.size().isEmpty()) {
            return;
        }
        double y = scale.clamped(column.size().get().size());
        if (column.kind() == SizePicture.Kind.STRUCK_OUT) {
            drawing.line(new Point(box.left(), top), new Point(box.right(), bottom), Stroke.RULE, Role.INK2);
            drawing.line(new Point(box.left(), bottom), new Point(box.right(), top), Stroke.RULE, Role.INK2);
            return;
        }
        Box stock = stock(column, box);
        double edge = stock.height() > 0 ? picture.metalAbove() ? stock.top() : stock.bottom() : y;
        Box metal = picture.metalAbove()
                ? new Box(box.left(), top, box.right(), edge)
                : new Box(box.left(), edge, box.right(), bottom);
        if (picture.showsMetal(column)) {
            drawing.metal(List.of(metal.corners()));
        }
        if (stock.height() > 0) {
            drawing.stock(stock.corners());
        }
    }

    /** What the cut takes off at a reading of the pass in hand; without height where nothing comes off. */
    private Box stock(SizePicture.ReadingColumn column, Box box) {
        Length size = column.size().orElseThrow().size();
        double now = scale.clamped(size);
        double then = column.kind() == SizePicture.Kind.TAKEN ? scale.clamped(picture.afterCut(size)) : now;
        return new Box(box.left(), Math.min(now, then), box.right(), Math.max(now, then));
    }

    private void mate() {
        picture.mate().filter(surface -> !scale.isBelow(surface)).ifPresent(surface -> {
            double y = scale.clamped(surface);
            drawing.otherMetal(new Box(left, y, right, bottom).corners());
            drawing.across(y, left, right, Stroke.OUTLINE, Role.LINE);
        });
    }

    private void guardBands() {
        Length band = picture.guardBand();
        if (band.signum() > 0) {
            picture.upper()
                    .ifPresent(limit -> guardBand(limit.size(), limit.size().minus(band)));
            picture.lower().ifPresent(limit -> guardBand(limit.size().plus(band), limit.size()));
        }
    }

    private void guardBand(Length from, Length to) {
        drawing.guardBand(new Box(left, scale.clamped(from), right, scale.clamped(to)).corners());
    }

    private void ticks() {
        for (StripScale.Tick tick : scale.ticks()) {
            double reach = ticksWidth(drawing) * (tick.isLong() ? 0.9 : 0.5);
            drawing.across(tick.y(), left - reach, left, tick.isLong() ? Stroke.NEIGHBOUR : Stroke.RULE, Role.INK2);
        }
    }

    /** What is drawn right across the strip. */
    private List<Box> lines() {
        double band = picture.guardBand().signum();
        return Stream.of(
                        picture.limits().stream().map(limit -> across(limit.size(), limit.size())),
                        picture.cut().stream()
                                .map(cut -> across(cut.aim().size(), cut.aim().size())),
                        picture.upper().stream()
                                .filter(limit -> band > 0)
                                .map(limit -> across(limit.size(), limit.size().minus(picture.guardBand()))),
                        picture.lower().stream()
                                .filter(limit -> band > 0)
                                .map(limit -> across(limit.size().plus(picture.guardBand()), limit.size())),
                        picture.mate().stream().map(surface -> new Box(left, scale.clamped(surface), right, bottom)),
                        hasNoColumn()
                                ? picture.judged().stream().map(size -> across(size.size(), size.size()))
                                : Stream.<Box>empty())
                .flatMap(boxes -> boxes)
                .toList();
    }

    private Box across(Length from, Length to) {
        return new Box(left, scale.clamped(from), right, scale.clamped(to)).grown(2);
    }

    /** Whether what is judged was read nowhere, as an average. */
    private boolean hasNoColumn() {
        return picture.deciding().isEmpty();
    }

    private void limits() {
        picture.limits()
                .forEach(limit -> drawing.across(
                        scale.y(limit.size()), left - ticksWidth(drawing), right, Stroke.OUTLINE, Role.INK));
        picture.cut()
                .filter(cut -> !scale.isAbove(cut.aim().size())
                        && !scale.isBelow(cut.aim().size()))
                .ifPresent(cut -> drawing.across(
                        scale.y(cut.aim().size()),
                        left - ticksWidth(drawing) * 0.5,
                        right + 10,
                        Stroke.AIM,
                        Role.LINE));
    }

    private void surfaces() {
        for (int i = 0; i < boxes.size(); i++) {
            SizePicture.ReadingColumn column = columns.get(i);
            Box box = boxes.get(i);
            column.size().ifPresent(sized -> surface(column, sized, box));
        }
        picture.judged()
                .filter(judged -> hasNoColumn())
                .ifPresent(judged ->
                        drawing.across(scale.clamped(judged.size()), left, right, Stroke.OUTLINE, Role.ACCENT));
    }

    private void surface(SizePicture.ReadingColumn column, SizePicture.Sized sized, Box box) {
        double y = scale.clamped(sized.size());
        boolean out = scale.isAbove(sized.size()) || scale.isBelow(sized.size());
        boolean struck = column.kind() == SizePicture.Kind.STRUCK_OUT;
        Stroke stroke = column.decides() ? Stroke.READ : struck ? Stroke.NEIGHBOUR : Stroke.OUTLINE;
        Role role = column.decides() ? Role.ACCENT : struck ? Role.INK2 : Role.LINE;
        if (out) {
            broken(box, scale.isAbove(sized.size()), stroke, role);
        } else {
            drawing.across(y, box.left(), box.right(), stroke, role);
        }
    }

    /** A break line: the surface lies out of the window. */
    private void broken(Box box, boolean above, Stroke stroke, Role role) {
        double y = above ? top + BREAK : bottom - BREAK;
        double x = box.centreX();
        double size = Math.min(6, box.width() / 4);
        drawing.chain(
                List.of(
                        new Point(box.left(), y),
                        new Point(x - size, y),
                        new Point(x - size / 3, y - size),
                        new Point(x + size / 3, y + size),
                        new Point(x + size, y),
                        new Point(box.right(), y)),
                new Stroke(Math.min(3, stroke.width()), List.of()),
                role);
    }

    private boolean isBare() {
        return room.height() < drawing.lettered(BARE);
    }
}
