package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;

/** The wall of a section magnified: one column a reading or a cut, limits, guard band, stock, and ticks at the side. */
final class Strip {

    private static final double TICKS = 18;
    private static final double WIDEST_COLUMN = 44;
    private static final double NARROWEST_COLUMN = 12;
    private static final double NARROWEST_STRIP = 70;
    private static final double STRUCK = 0.5;
    /** Room for a size under it. */
    private static final double EARLIER = 1.5;
    /** Of the width of the sheet. */
    private static final double MOST = 0.32;

    private static final double SMALL_TEXT = 18;
    private static final double LINE = 24;
    private static final double BETWEEN = 8;
    private static final double LEAST_HEIGHT = 130;
    private static final double LOW = 165;
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
    /**
     * What was cut before, in lines of its own; empty where it stands under its columns, and where there is no height
     * for it.
     */
    private final List<String> history;

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
        this.history = history();
        this.bottom = room.bottom()
                - drawing.lettered(labelled().isEmpty() ? 8 : 30)
                - drawing.lettered(groups().isEmpty() ? 0 : 26)
                - drawing.lettered(LINE) * history.size();
        this.scale = new StripScale(picture, top, bottom);
    }

    static double ticksWidth(Drawing drawing) {
        return TICKS * Math.max(0.6, drawing.frame().lineScale());
    }

    static double columnsWidth(SizePicture picture, Drawing drawing) {
        double parts = parts(picture);
        double most = MOST * drawing.frame().width();
        double scale = Math.max(0.6, drawing.frame().textScale());
        double labels = parts
                * picture.columns().stream()
                        .mapToDouble(
                                column -> (drawing.width(label(column.label()).bold()) + 6) / part(column))
                        .max()
                        .orElse(0);
        return labels <= most ? Math.max(labels, width(parts, most, scale)) : width(parts, most, scale);
    }

    private static double width(double parts, double most, double scale) {
        return Math.max(
                NARROWEST_STRIP * Math.min(1, scale),
                parts * Math.max(NARROWEST_COLUMN, Math.min(WIDEST_COLUMN * scale, most / parts)));
    }

    private static double parts(SizePicture picture) {
        return Math.max(1, picture.columns().stream().mapToDouble(Strip::part).sum());
    }

    private static double part(SizePicture.ReadingColumn column) {
        return switch (column.kind()) {
            case STRUCK_OUT -> STRUCK;
            case EARLIER -> EARLIER;
            case TAKEN, SPREAD, MISSING -> 1;
        };
    }

    StripScale scale() {
        return scale;
    }

    void draw() {
        zone();
        List<Box> boxes = boxes();
        for (int i = 0; i < boxes.size(); i++) {
            column(picture.columns().get(i), boxes.get(i));
        }
        mate();
        guardBands();
        for (int i = 1; i < boxes.size(); i++) {
            drawing.line(
                    new Point(boxes.get(i).left(), top),
                    new Point(boxes.get(i).left(), bottom),
                    Stroke.RULE,
                    Role.RULE);
        }
        drawing.line(new Point(left, top), new Point(left, bottom), Stroke.NEIGHBOUR, Role.INK2);
        drawing.line(new Point(right, top), new Point(right, bottom), Stroke.NEIGHBOUR, Role.INK2);
        if (!isBare()) {
            ticks();
        }
        limits();
        surfaces(boxes);
        labels(boxes);
        Box lane = new Box(right, room.top(), room.right(), room.bottom());
        if (isBare()) {
            new BareLane(picture, drawing, scale, lane).draw();
        } else {
            new StripLane(picture, drawing, scale, lane, top, bottom, scaleWords()).draw();
        }
    }

    /** What one tick is; and the letter of the spot on the section that the strip magnifies. */
    private Box scaleWords() {
        Label letter = Label.of(detail ? SizePicture.DETAIL + " " : "", SizePicture.DETAIL_TEXT, Role.ACCENT)
                .bold();
        Label words = Label.of(picture.said().scale().apply(scale.step().toPlainString()), SMALL_TEXT, Role.INK2);
        double width = drawing.width(letter) + drawing.width(words);
        Box box = drawing.text(
                letter,
                new Point(Math.max(0, Math.min(room.left(), room.right() - width)), room.top() + drawing.lettered(11)),
                Anchor.LEFT);
        Box further = drawing.text(words, new Point(box.right(), room.top() + drawing.lettered(11)), Anchor.LEFT);
        return new Box(
                box.left(),
                Math.min(box.top(), further.top()),
                further.right(),
                Math.max(box.bottom(), further.bottom()));
    }

    private void zone() {
        double from = picture.upper().map(limit -> scale.clamped(limit.size())).orElse(top);
        double to = picture.lower().map(limit -> scale.clamped(limit.size())).orElse(bottom);
        drawing.area(new Box(left, from, right, to).corners(), Role.ZONE);
    }

    private List<Box> boxes() {
        double unit = (right - left) / parts(picture);
        List<Box> boxes = new ArrayList<>();
        double x = left;
        for (SizePicture.ReadingColumn column : picture.columns()) {
            boxes.add(new Box(x, top, x + part(column) * unit, bottom));
            x += part(column) * unit;
        }
        return boxes;
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
            drawing.line(new Point(left, y), new Point(right, y), Stroke.OUTLINE, Role.LINE);
        });
    }

    private void guardBands() {
        if (picture.guardBand().signum() == 0) {
            return;
        }
        picture.upper()
                .ifPresent(limit -> drawing.guardBand(new Box(
                                left,
                                scale.clamped(limit.size()),
                                right,
                                scale.clamped(limit.size().minus(picture.guardBand())))
                        .corners()));
        picture.lower()
                .ifPresent(limit -> drawing.guardBand(new Box(
                                left,
                                scale.clamped(limit.size().plus(picture.guardBand())),
                                right,
                                scale.clamped(limit.size()))
                        .corners()));
    }

    private void ticks() {
        for (StripScale.Tick tick : scale.ticks()) {
            double reach = ticksWidth(drawing) * (tick.isLong() ? 0.9 : 0.5);
            drawing.line(
                    new Point(left - reach, tick.y()),
                    new Point(left, tick.y()),
                    tick.isLong() ? Stroke.NEIGHBOUR : Stroke.RULE,
                    Role.INK2);
        }
    }

    private void limits() {
        List.of(picture.lower(), picture.upper())
                .forEach(limit -> limit.ifPresent(sized -> drawing.line(
                        new Point(left - ticksWidth(drawing), scale.y(sized.size())),
                        new Point(isBare() ? right : room.right(), scale.y(sized.size())),
                        Stroke.OUTLINE,
                        Role.INK)));
        picture.cut()
                .filter(cut -> !scale.isAbove(cut.aim().size())
                        && !scale.isBelow(cut.aim().size()))
                .ifPresent(cut -> drawing.line(
                        new Point(
                                left - ticksWidth(drawing) * 0.5,
                                scale.y(cut.aim().size())),
                        new Point(right + 10, scale.y(cut.aim().size())),
                        Stroke.AIM,
                        Role.LINE));
    }

    private void surfaces(List<Box> boxes) {
        for (int i = 0; i < boxes.size(); i++) {
            SizePicture.ReadingColumn column = picture.columns().get(i);
            Box box = boxes.get(i);
            column.size().ifPresent(sized -> surface(column, sized, box));
        }
        boolean shown = picture.deciding().isPresent();
        picture.judged()
                .filter(judged -> !shown)
                .ifPresent(judged -> drawing.line(
                        new Point(left, scale.clamped(judged.size())),
                        new Point(right, scale.clamped(judged.size())),
                        Stroke.OUTLINE,
                        Role.ACCENT));
    }

    private void surface(SizePicture.ReadingColumn column, SizePicture.Sized sized, Box box) {
        double y = scale.clamped(sized.size());
        boolean out = scale.isAbove(sized.size()) || scale.isBelow(sized.size());
        Stroke stroke = column.decides()
                ? Stroke.READ
                : column.kind() == SizePicture.Kind.STRUCK_OUT ? Stroke.NEIGHBOUR : Stroke.OUTLINE;
        Role role =
                column.decides() ? Role.ACCENT : column.kind() == SizePicture.Kind.STRUCK_OUT ? Role.INK2 : Role.LINE;
        if (out) {
            broken(box, scale.isAbove(sized.size()), stroke, role);
        } else {
            drawing.line(new Point(box.left(), y), new Point(box.right(), y), stroke, role);
        }
    }

    /** A break line: the surface lies out of the window. */
    private void broken(Box box, boolean above, Stroke stroke, Role role) {
        double y = above ? top + 7 : bottom - 7;
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

    private Optional<String> labelled() {
        return picture.columns().stream()
                .map(this::labelOf)
                .filter(label -> !label.isEmpty())
                .findFirst();
    }

    private List<String> groups() {
        return picture.columns().stream()
                .map(this::groupOf)
                .filter(group -> !group.isEmpty())
                .distinct()
                .toList();
    }

    /** The sizes at the side need what height there is. */
    private boolean isLow() {
        return room.height() < drawing.lettered(LOW);
    }

    private boolean isBare() {
        return room.height() < drawing.lettered(BARE);
    }

    private String labelOf(SizePicture.ReadingColumn column) {
        return isLow() ? "" : column.kind() == SizePicture.Kind.EARLIER && !history.isEmpty() ? "" : column.label();
    }

    private String groupOf(SizePicture.ReadingColumn column) {
        return isLow() ? "" : column.kind() == SizePicture.Kind.EARLIER && !history.isEmpty() ? "" : column.group();
    }

    private List<String> history() {
        List<SizePicture.ReadingColumn> earlier = picture.columns().stream()
                .filter(column -> column.kind() == SizePicture.Kind.EARLIER)
                .toList();
        double each = (right - left) / parts(picture) * EARLIER - BETWEEN;
        boolean fits = earlier.stream()
                .allMatch(column ->
                        drawing.width(label(column.label())) <= each && drawing.width(label(column.group())) <= each);
        if (fits || room.height() < drawing.lettered(LEAST_HEIGHT + LINE * earlier.size())) {
            return List.of();
        }
        List<String> lines = new ArrayList<>();
        for (SizePicture.ReadingColumn column : earlier) {
            String said = column.group() + " " + column.label();
            String longer = lines.isEmpty() ? said : lines.get(lines.size() - 1) + "   " + said;
            if (!lines.isEmpty() && drawing.width(label(longer)) <= room.width()) {
                lines.set(lines.size() - 1, longer);
            } else {
                lines.add(said);
            }
        }
        return lines;
    }

    /** Under the columns: their labels where all of them fit, what they share under that, and what was cut before. */
    private void labels(List<Box> boxes) {
        boolean fit = true;
        for (int i = 0; i < boxes.size(); i++) {
            fit &= drawing.width(label(labelOf(picture.columns().get(i))))
                    <= boxes.get(i).width() - 1;
        }
        double y = bottom + drawing.lettered(16);
        if (fit) {
            for (int i = 0; i < boxes.size(); i++) {
                SizePicture.ReadingColumn column = picture.columns().get(i);
                Label label = column.decides() ? label(labelOf(column)).bold() : label(labelOf(column));
                if (drawing.width(label) <= boxes.get(i).width()) {
                    drawing.text(label, new Point(boxes.get(i).centreX(), y), Anchor.CENTRE);
                }
            }
            y += drawing.lettered(25);
        }
        groupLabels(boxes, y);
        for (int i = 0; i < history.size(); i++) {
            drawing.text(
                    Label.of(history.get(i), SMALL_TEXT, Role.INK2),
                    new Point(room.left(), room.bottom() - drawing.lettered(LINE) * (history.size() - i - 0.5)),
                    Anchor.LEFT);
        }
    }

    private void groupLabels(List<Box> boxes, double y) {
        double free = room.left();
        for (int i = 0; i < boxes.size(); i++) {
            String group = groupOf(picture.columns().get(i));
            int last = i;
            while (last + 1 < boxes.size()
                    && groupOf(picture.columns().get(last + 1)).equals(group)) {
                last++;
            }
            Label label = Label.of(group, SMALL_TEXT, Role.INK2);
            double width = drawing.width(label);
            double start = Math.max((boxes.get(i).left() + boxes.get(last).right() - width) / 2, room.left());
            if (!group.isEmpty()
                    && start >= free
                    && start + width <= Math.max(boxes.get(last).right() + 3, room.right())) {
                drawing.text(label, new Point(start, y), Anchor.LEFT);
                free = start + width + drawing.lettered(6);
            }
            i = last;
        }
    }

    private static Label label(String text) {
        return Label.of(text, SMALL_TEXT, Role.INK);
    }
}
