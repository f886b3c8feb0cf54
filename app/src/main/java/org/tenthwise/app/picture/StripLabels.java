package org.tenthwise.app.picture;

import java.util.List;
import java.util.stream.IntStream;

/** What stands under the columns of a strip: their labels, and what they share under that. */
final class StripLabels {

    private static final double TEXT = 18;
    /** Lower than this the sizes at the side need what height there is. */
    private static final double LOW = 165;

    private final List<SizePicture.ReadingColumn> columns;
    private final Drawing drawing;
    private final Box room;

    StripLabels(List<SizePicture.ReadingColumn> columns, Drawing drawing, Box room) {
        this.columns = columns;
        this.drawing = drawing;
        this.room = room;
    }

    static Label label(String text) {
        return Label.of(text, TEXT, Role.INK);
    }

    /** What it takes of the room. */
    double height() {
        boolean labelled = isLabelled()
                && columns.stream().anyMatch(column -> !column.label().isEmpty());
        boolean grouped = isLabelled()
                && columns.stream().anyMatch(column -> !column.group().isEmpty());
        return drawing.lettered(labelled ? 30 : 8) + drawing.lettered(grouped ? 26 : 0);
    }

    private boolean isLabelled() {
        return room.height() >= drawing.lettered(LOW);
    }

    /**
     * @param bottom of the columns; the labels of the readings in hand are there where all of them fit
     * @param beside told of what reaches into it
     */
    void draw(List<Box> boxes, double bottom, FreeRoom beside) {
        if (!isLabelled()) {
            return;
        }
        boolean fit = IntStream.range(0, boxes.size())
                .allMatch(i -> columns.get(i).kind() == SizePicture.Kind.EARLIER || fits(i, boxes));
        double y = bottom + drawing.lettered(16);
        for (int i = 0; i < boxes.size(); i++) {
            SizePicture.ReadingColumn column = columns.get(i);
            if (fits(i, boxes) && (fit || column.kind() == SizePicture.Kind.EARLIER)) {
                Label label = column.decides() ? label(column.label()).bold() : label(column.label());
                drawing.text(label, new Point(boxes.get(i).centreX(), y), Anchor.CENTRE);
            }
        }
        boolean labelled = fit || columns.stream().anyMatch(column -> column.kind() == SizePicture.Kind.EARLIER);
        groups(boxes, labelled ? y + drawing.lettered(25) : y, beside);
    }

    private boolean fits(int which, List<Box> boxes) {
        SizePicture.ReadingColumn column = columns.get(which);
        Label label = column.decides() ? label(column.label()).bold() : label(column.label());
        return drawing.width(label) <= boxes.get(which).width() - 1;
    }

    private void groups(List<Box> boxes, double y, FreeRoom beside) {
        double free = room.left();
        for (int i = 0; i < boxes.size(); i++) {
            String group = columns.get(i).group();
            int last = i;
            while (last + 1 < boxes.size() && columns.get(last + 1).group().equals(group)) {
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
