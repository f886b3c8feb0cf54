package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.picture.Role;

/** Named values side by side, a thin rule under them, thin lines between. */
final class CellGrid {

    private static final double GAP = 8;
    private static final double PADDING = 5;

    private record Cell(List<String> name, List<String> lines) {}

    private final PageFlow flow;
    private final double[] widths;
    private final List<Cell> cells = new ArrayList<>();

    /** @param widths of the cells, in pixels; together the width of the page */
    CellGrid(PageFlow flow, double... widths) {
        this.flow = flow;
        this.widths = widths;
    }

    /** The next cell; a blank value is a dash, so that what was left out shows. */
    CellGrid cell(String name, String value) {
        double width = widths[cells.size()] - (cells.isEmpty() ? GAP : 2 * GAP);
        List<String> lines = flow.wrapping().lines(value, Style.STRONG, width);
        cells.add(
                new Cell(flow.wrapping().lines(name, Style.SMALL, width), lines.isEmpty() ? List.of("\u2013") : lines));
        return this;
    }

    /** Puts the row down. */
    void end() {
        int most = cells.stream().mapToInt(cell -> cell.lines().size()).max().orElse(1);
        int names = cells.stream().mapToInt(cell -> cell.name().size()).max().orElse(1);
        double under = PADDING + names * Style.SMALL.leading();
        double height = under + most * Style.STRONG.leading() + PADDING;
        flow.need(height);
        double top = flow.y();
        double left = PageFlow.LEFT;
        for (int i = 0; i < cells.size(); i++) {
            double edge = left;
            double text = left + (i == 0 ? 0 : GAP);
            if (i > 0) {
                flow.leaf().add(drawing -> drawing.down(edge, top, top + height, Strokes.THIN, Role.INK));
            }
            write(cells.get(i).name(), Style.SMALL, text, top + PADDING);
            write(cells.get(i).lines(), Style.STRONG, text, top + under);
            left += widths[i];
        }
        flow.down(height);
        flow.rule(Strokes.THIN, Role.INK);
    }

    private void write(List<String> lines, Style style, double left, double top) {
        double at = top;
        for (String line : lines) {
            flow.write(line, style, left, at);
            at += style.leading();
        }
    }
}
