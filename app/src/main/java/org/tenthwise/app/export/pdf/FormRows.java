package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.tenthwise.app.firstarticle.FormTable;
import org.tenthwise.app.picture.Role;
import org.tenthwise.model.words.Words;

/** A table of a form: its head on every page, a rule under every row; a row higher than a page goes on on the next. */
final class FormRows {

    private static final double PADDING = 4;
    /** A longer word is broken. */
    private static final double LONGEST_WORD = 130;

    private static final Style HEAD = Style.SMALL_BOLD;
    private static final Style CELL = Style.SMALL.in(Role.INK);
    /** As wide as the widest lettering of a cell, and as high as the other. */
    private static final Style OUTSTANDING = Style.SMALL_BOLD;

    private final FormSheet sheet;
    private final Words words;
    private final List<Double> shares;
    private double[] widths = {};

    /** @param shares of the columns in the width of the page; a column of longer words has more */
    FormRows(FormSheet sheet, Words words, List<Double> shares) {
        this.sheet = sheet;
        this.words = words;
        this.shares = List.copyOf(shares);
    }

    /** No word is broken where it need not be: what its longest needs a column has, of the rest each its share. */
    private double[] widths(FormTable table) {
        double[] least = new double[shares.size()];
        for (int i = 0; i < least.length; i++) {
            int column = i;
            double cells = table.rows().stream()
                    .mapToDouble(row -> sheet.wrapping().widestWord(words.readable(row.get(column)), OUTSTANDING))
                    .max()
                    .orElse(0);
            double head = sheet.wrapping().widestWord(table.heads().get(column), HEAD);
            least[i] = Math.min(LONGEST_WORD, Math.max(cells, head)) + 2 * PADDING + 1;
        }
        double needed = DoubleStream.of(least).sum();
        double free = Math.max(0, sheet.across() - needed);
        double scale = Math.min(1, sheet.across() / needed);
        double all = shares.stream().mapToDouble(Double::doubleValue).sum();
        return IntStream.range(0, least.length)
                .mapToDouble(i -> least[i] * scale + free * shares.get(i) / all)
                .toArray();
    }

    void add(FormTable table) {
        widths = widths(table);
        sheet.need(120);
        head(table);
        for (int i = 0; i < table.rows().size(); i++) {
            row(table, table.rows().get(i), table.outstanding().contains(i) ? OUTSTANDING : CELL);
        }
    }

    private void head(FormTable table) {
        sheet.down(PADDING);
        sheet.rule(Strokes.MEDIUM);
        slice(lines(table.heads(), HEAD), 0, Integer.MAX_VALUE, HEAD);
        sheet.rule(Strokes.MEDIUM);
    }

    private void row(FormTable table, List<String> row, Style style) {
        List<List<String>> lines = lines(row, style);
        int most = most(lines);
        if (height(most) > sheet.bottom() - sheet.y() && most < MOST_AT_ONCE) {
            sheet.turn();
            head(table);
        }
        int done = 0;
        while (done < most) {
            int fitting = (int) ((sheet.bottom() - sheet.y() - 2 * PADDING) / CELL.leading());
            if (fitting < 1) {
                sheet.turn();
                head(table);
                continue;
            }
            int next = Math.min(most - done, fitting);
            slice(lines, done, next, style);
            done += next;
        }
        sheet.rule(Strokes.THIN);
    }

    /** A row of fewer lines is not parted. */
    private static final int MOST_AT_ONCE = 20;

    private static double height(int lines) {
        return lines * CELL.leading() + 2 * PADDING;
    }

    private List<List<String>> lines(List<String> cells, Style style) {
        List<List<String>> lines = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            lines.add(sheet.wrapping().lines(words.readable(cells.get(i)), style, widths[i] - 2 * PADDING));
        }
        return lines;
    }

    private static int most(List<List<String>> lines) {
        return Math.max(1, lines.stream().mapToInt(List::size).max().orElse(0));
    }

    private void slice(List<List<String>> lines, int from, int count, Style style) {
        int rows = Math.min(count, most(lines) - from);
        double top = sheet.y();
        double left = FormSheet.MARGIN;
        for (int column = 0; column < lines.size(); column++) {
            List<String> cell = lines.get(column);
            for (int i = from; i < Math.min(from + rows, cell.size()); i++) {
                sheet.write(cell.get(i), style, left + PADDING, top + PADDING + (i - from) * style.leading());
            }
            left += widths[column];
        }
        double height = rows * style.leading() + 2 * PADDING;
        borders(top, height);
        sheet.down(height);
    }

    private void borders(double top, double height) {
        sheet.page().add(drawing -> {
            double at = FormSheet.MARGIN;
            drawing.down(at, top, top + height, Strokes.THIN, Role.INK);
            for (double width : widths) {
                at += width;
                drawing.down(at, top, top + height, Strokes.THIN, Role.INK);
            }
        });
    }
}
