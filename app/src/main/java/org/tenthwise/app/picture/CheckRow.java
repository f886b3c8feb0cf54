package org.tenthwise.app.picture;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * All checks of a run in one row: a verdict shape each, a pair of upright bars at every hold point, a triangle over the
 * one in hand. Where they do not fit in one row they go on in a second.
 *
 * @param inHand place in {@code checks} of the one in hand; absent if there is none
 */
public record CheckRow(List<CheckMark> checks, OptionalInt inHand, String spoken) implements Picture {

    /** One check; {@code hold} where a hold point follows it. */
    public record CheckMark(VerdictKind standing, boolean hold) {}

    private static final double LARGEST = 9;
    private static final double SMALLEST = 4;
    /** Centre to centre, and added at a hold point, in radii. */
    private static final double APART = 2.45;

    private static final double HOLD = 1.3;
    private static final double ROW = 4.6;

    public CheckRow {
        checks = List.copyOf(checks);
    }

    @Override
    public void draw(Drawing drawing) {
        Box frame = drawing.frame().box();
        int rows = 1;
        while (rows < checks.size() && radius(frame, rows) < SMALLEST) {
            rows++;
        }
        double radius = radius(frame, rows);
        int perRow = perRow(rows);
        double height = Math.min(frame.height() / rows, ROW * radius);
        double top = frame.centreY() - height * rows / 2;
        for (int row = 0; row < rows; row++) {
            row(
                    drawing,
                    row * perRow,
                    Math.min(checks.size(), (row + 1) * perRow),
                    top + height * (row + 0.5) + radius * 0.8,
                    radius);
        }
    }

    private int perRow(int rows) {
        return Math.max(1, (checks.size() + rows - 1) / rows);
    }

    private double radius(Box frame, int rows) {
        double widest = IntStream.range(0, rows)
                .mapToDouble(row -> length(row * perRow(rows), Math.min(checks.size(), (row + 1) * perRow(rows))))
                .max()
                .orElse(1);
        return Math.min(LARGEST, Math.min(frame.width() / Math.max(widest, 1), frame.height() / rows / ROW));
    }

    /** Of a stretch of checks, in radii. */
    private double length(int from, int to) {
        return IntStream.range(Math.min(from, to), to)
                .mapToDouble(i -> APART + (checks.get(i).hold() ? HOLD : 0))
                .sum();
    }

    private void row(Drawing drawing, int from, int to, double y, double radius) {
        double x = APART / 2 * radius;
        for (int i = from; i < to; i++) {
            CheckMark check = checks.get(i);
            boolean hand = inHand.isPresent() && inHand.getAsInt() == i;
            if (hand && check.standing() == VerdictKind.OPEN) {
                VerdictShape.open(drawing, new Point(x, y), radius, Role.ACCENT);
            } else {
                VerdictShape.draw(drawing, check.standing(), new Point(x, y), radius);
            }
            if (hand) {
                drawing.area(
                        List.of(
                                new Point(x - 0.95 * radius, y - 2.75 * radius),
                                new Point(x + 0.95 * radius, y - 2.75 * radius),
                                new Point(x, y - 1.45 * radius)),
                        Role.ACCENT);
            }
            x += APART * radius;
            if (check.hold()) {
                hold(drawing, x - (APART / 2 - HOLD / 2) * radius, y, radius);
                x += HOLD * radius;
            }
        }
    }

    private static void hold(Drawing drawing, double x, double y, double radius) {
        double reach = 1.45 * radius;
        double apart = Math.min(2.5, radius * 0.4);
        drawing.down(x - apart, y - reach, y + reach, Stroke.OUTLINE, Role.INK);
        drawing.down(x + apart, y - reach, y + reach, Stroke.THIN, Role.INK);
    }
}
