package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.tenthwise.app.picture.Role;

/** Rows of readings in two columns side by side, down the left one and on down the right one, as low as they can be. */
final class ReadingColumns {

    static final double WIDTH = 344;
    /** From the left column to the right one. */
    static final double RIGHT = PageFlow.WIDTH - WIDTH;

    private static final double HEAD = 18;

    private final PageFlow flow;
    private final List<Column> columns;
    private final RecordContext matter;
    private final Runnable name;
    private final List<DoubleFunction<Row>> rows = new ArrayList<>();

    /**
     * @param columns of the left one
     * @param name names the characteristic where it goes on on another leaf
     */
    ReadingColumns(RecordContext matter, PageFlow flow, List<Column> columns, Runnable name) {
        this.matter = matter;
        this.flow = flow;
        this.columns = columns;
        this.name = name;
    }

    /** @param row made for columns so far to the right of those of the left one */
    void add(DoubleFunction<Row> row) {
        rows.add(row);
    }

    /** Puts down what was added. */
    void end() {
        int done = 0;
        while (done < rows.size()) {
            List<Double> rest = rows.subList(done, rows.size()).stream()
                    .map(row -> row.apply(0).height())
                    .toList();
            if (flow.room() < HEAD + rest.get(0)) {
                flow.turn();
                name.run();
            }
            double room = flow.room() - HEAD;
            double height = lowest(rest, room);
            int left = fitting(rest, 0, height);
            int right = fitting(rest, left, height);
            if (left == 0) {
                rows.get(done).apply(0).into(flow, name);
                done++;
                continue;
            }
            put(done, left, right);
            done += left + right;
            if (done < rows.size()) {
                flow.turn();
                name.run();
            }
        }
        rows.clear();
    }

    private void put(int from, int left, int right) {
        head(right > 0);
        double top = flow.y();
        double lower = down(from, left, 0, top);
        double other = down(from + left, right, RIGHT, top);
        flow.down(Math.max(lower, other) - top + 2);
    }

    private double down(int from, int count, double right, double top) {
        double at = top;
        for (DoubleFunction<Row> row : rows.subList(from, from + count)) {
            Row put = row.apply(right);
            put.at(flow, at, PageFlow.LEFT + right, PageFlow.LEFT + right + WIDTH);
            at += put.height();
        }
        return at;
    }

    private void head(boolean both) {
        List<Column> heads = new ArrayList<>(columns);
        if (both) {
            columns.forEach(column -> heads.add(column.moved(RIGHT)));
        }
        double from = flow.y();
        for (Column column : heads) {
            String said = matter.say(column.head());
            if (column.toRight()) {
                flow.writeToRight(said, Style.SMALL, column.right(), from);
            } else {
                flow.write(said, Style.SMALL, column.left(), from);
            }
        }
        flow.down(Style.SMALL.leading());
        double at = flow.y();
        flow.leaf().add(drawing -> drawing.across(at, PageFlow.LEFT, PageFlow.LEFT + WIDTH, Strokes.THIN, Role.INK));
        if (both) {
            flow.leaf()
                    .add(drawing -> drawing.across(
                            at, PageFlow.LEFT + RIGHT, PageFlow.LEFT + RIGHT + WIDTH, Strokes.THIN, Role.INK));
        }
    }

    /** The least height two columns of all of them have; the room where that is less. */
    private static double lowest(List<Double> heights, double room) {
        double sum = heights.stream().mapToDouble(Double::doubleValue).sum();
        double height = Math.max(sum / 2, heights.get(0));
        while (height < room) {
            int left = fitting(heights, 0, height);
            if (left + fitting(heights, left, height) == heights.size()) {
                return height;
            }
            height += 4;
        }
        return room;
    }

    private static int fitting(List<Double> heights, int from, double room) {
        double used = 0;
        int count = 0;
        while (from + count < heights.size() && used + heights.get(from + count) <= room + 0.01) {
            used += heights.get(from + count);
            count++;
        }
        return count;
    }
}
