package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;

/** What stands under the columns of a strip: their labels, what they share under that, and what was cut before. */
final class StripLabels {

    private static final double TEXT = 18;
    private static final double LINE = 24;
    private static final double BETWEEN = 8;
    /** Lower than this, and a line more for each earlier cut, those get no lines of their own. */
    private static final double LEAST_HEIGHT = 130;
    /** Lower than this the sizes at the side need what height there is. */
    private static final double LOW = 165;

    private final SizePicture picture;
    private final Drawing drawing;
    private final Box room;
    /**
     * What was cut before, in lines of its own; empty where it stands under its columns, and where there is no height
     * for it.
     */
    private final List<String> history;

    /** @param earlierWidth of the column of an earlier cut */
    StripLabels(SizePicture picture, Drawing drawing, Box room, double earlierWidth) {
        this.picture = picture;
        this.drawing = drawing;
        this.room = room;
        this.history = history(earlierWidth - BETWEEN);
    }

    static Label label(String text) {
        return Label.of(text, TEXT, Role.INK);
    }

    /** What it takes of the room. */
    double height() {
        boolean labelled =
                picture.columns().stream().anyMatch(column -> !labelOf(column).isEmpty());
        boolean grouped =
                picture.columns().stream().anyMatch(column -> !groupOf(column).isEmpty());
        return drawing.lettered(labelled ? 30 : 8)
                + drawing.lettered(grouped ? 26 : 0)
                + drawing.lettered(LINE) * history.size();
    }

    private String labelOf(SizePicture.ReadingColumn column) {
        return isUnlabelled(column) ? "" : column.label();
    }

    private String groupOf(SizePicture.ReadingColumn column) {
        return isUnlabelled(column) ? "" : column.group();
    }

    private boolean isUnlabelled(SizePicture.ReadingColumn column) {
        return room.height() < drawing.lettered(LOW) || column.kind() == SizePicture.Kind.EARLIER && !history.isEmpty();
    }

    private List<String> history(double each) {
        List<SizePicture.ReadingColumn> earlier = picture.columns().stream()
                .filter(column -> column.kind() == SizePicture.Kind.EARLIER)
                .toList();
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

    /**
     * @param bottom of the columns, whose labels are there where all of them fit
     * @param beside told of what reaches into it
     */
    void draw(List<Box> boxes, double bottom, FreeRoom beside) {
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
        groups(boxes, y, beside);
        for (int i = 0; i < history.size(); i++) {
            beside.take(drawing.text(
                    Label.of(history.get(i), TEXT, Role.INK2),
                    new Point(room.left(), room.bottom() - drawing.lettered(LINE) * (history.size() - i - 0.5)),
                    Anchor.LEFT));
        }
    }

    private void groups(List<Box> boxes, double y, FreeRoom beside) {
        double free = room.left();
        for (int i = 0; i < boxes.size(); i++) {
            String group = groupOf(picture.columns().get(i));
            int last = i;
            while (last + 1 < boxes.size()
                    && groupOf(picture.columns().get(last + 1)).equals(group)) {
                last++;
            }
            Label label = Label.of(group, TEXT, Role.INK2);
            double width = drawing.width(label);
            double start = Math.max((boxes.get(i).left() + boxes.get(last).right() - width) / 2, room.left());
            if (!group.isEmpty()
                    && start >= free
                    && start + width <= Math.max(boxes.get(last).right() + 3, room.right())) {
                beside.take(drawing.text(label, new Point(start, y), Anchor.LEFT));
                free = start + width + drawing.lettered(6);
            }
            i = last;
        }
    }
}
