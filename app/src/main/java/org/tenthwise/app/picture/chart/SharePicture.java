package org.tenthwise.app.picture.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Anchor;
import org.tenthwise.app.picture.Box;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.Label;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.Stroke;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * Characteristics, a row each, on one scale: −100 the lower limit, 0 the middle, +100 the upper limit. A size that may
 * only be so great has the limit alone, from 0. Every part is a mark, the last one made the larger.
 *
 * @param lower what stands over the lower limit; so {@code middle} and {@code upper}
 */
public record SharePicture(List<ShareRow> rows, String lower, String middle, String upper, String none, String spoken)
        implements Picture {

    /**
     * @param number balloon or number of the check
     * @param note how many parts; or why there is no mark
     * @param both whether there are two limits; otherwise the scale begins at 0
     */
    public record ShareRow(String number, String name, String note, boolean both, List<ShareMark> marks) {
        public ShareRow {
            marks = List.copyOf(marks);
        }
    }

    /** @param percent of the tolerance, 100 on a limit */
    public record ShareMark(double percent, VerdictKind verdict) {}

    private static final double NAME = 20;
    private static final double TEXT = 18;
    private static final double LINE = 26;
    private static final double NAMES = 0.46;
    private static final double ROW = 64;

    public SharePicture {
        rows = List.copyOf(rows);
    }

    private static double head(Frame frame) {
        return LINE * frame.textScale() + 4;
    }

    private double rowHeight(Frame frame) {
        double most = Math.max(ROW, 2.3 * LINE * frame.textScale()) * 1.5;
        return Math.min(most, (frame.height() - head(frame)) / Math.max(1, rows.size()));
    }

    @Override
    public void draw(Drawing drawing) {
        if (rows.isEmpty()) {
            EmptyPicture.draw(drawing, none);
            return;
        }
        Frame frame = drawing.frame();
        double names = NAMES * frame.width();
        Box scale = new Box(names, head(frame), frame.width() - 6, head(frame) + rowHeight(frame) * rows.size());
        new ShareHead(lower, middle, upper).draw(drawing, scale);
        for (int i = 0; i < rows.size(); i++) {
            double top = head(frame) + i * rowHeight(frame);
            row(drawing, i, new Box(0, top, frame.width(), top + rowHeight(frame)), scale);
        }
    }

    private void row(Drawing drawing, int place, Box box, Box scale) {
        ShareRow row = rows.get(place);
        if (place > 0) {
            drawing.across(box.top(), 0, drawing.frame().width(), Stroke.RULE, Role.RULE);
        }
        name(drawing, row, box, scale.left() - 12);
        ShareBand.draw(drawing, row, new Box(scale.left(), box.top(), scale.right(), box.bottom()));
    }

    /** Number and name, on two lines where one is too short, and under them the note where there is room for it. */
    private void name(Drawing drawing, ShareRow row, Box box, double right) {
        double line = drawing.lettered(LINE);
        int room = Math.max(1, (int) Math.floor((box.height() + 2) / line));
        Label number = Label.of(row.number(), NAME, Role.ACCENT).bold();
        double left = 12;
        double next = left + drawing.width(number) + 12;
        List<Label> lines = new ArrayList<>(names(drawing, row.name(), right - next, Math.min(2, room)));
        int names = lines.size();
        if (room > names) {
            cut(drawing, Label.of(row.note(), TEXT, Role.INK2), right - left).ifPresent(lines::add);
        }
        double y = box.centreY() - (lines.size() - 1) * line / 2;
        drawing.text(number, new Point(left, y), Anchor.LEFT);
        for (int i = 0; i < lines.size(); i++) {
            drawing.text(lines.get(i), new Point(i < names ? next : left, y + i * line), Anchor.LEFT);
        }
    }

    private static List<Label> names(Drawing drawing, String name, double room, int most) {
        List<String> lines = new ArrayList<>();
        for (String word : name.split(" ")) {
            int last = lines.size() - 1;
            boolean fits = last >= 0 && drawing.width(Label.of(lines.get(last) + " " + word, NAME, Role.INK)) <= room;
            if (fits || last >= 0 && lines.size() == most) {
                lines.set(last, lines.get(last) + " " + word);
            } else {
                lines.add(word);
            }
        }
        return lines.stream()
                .flatMap(line -> cut(drawing, Label.of(line, NAME, Role.INK), room).stream())
                .toList();
    }

    private static Optional<Label> cut(Drawing drawing, Label label, double room) {
        if (drawing.width(label) <= room) {
            return Optional.of(label);
        }
        for (int end = label.text().length() - 1; end > 0; end--) {
            Label shorter = new Label(
                    label.text().substring(0, end).strip() + "…", label.size(), label.face(), label.role(), false);
            if (drawing.width(shorter) <= room) {
                return Optional.of(shorter);
            }
        }
        return Optional.empty();
    }
}
