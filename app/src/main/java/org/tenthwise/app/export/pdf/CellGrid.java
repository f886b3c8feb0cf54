package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.picture.Role;

/** Named values side by side, a thin rule under them, thin lines between. */
final class CellGrid {

    private static final double GAP = 8;
    private static final double PADDING = 5;

    private record Cell(String name, List<String> lines) {}

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
        cells.add(new Cell(name, lines.isEmpty() ? List.of("\u2013") : lines));
        return this;
    }

    /** Puts the row down. */
    void end() {
        int most = cells.stream().mapToInt(cell -> cell.lines().size()).max().orElse(1);
        double height = 2 * PADDING + Style.SMALL.leading() + most * Style.STRONG.leading();
        flow.need(height);
        double top = flow.y();
        double left = PageFlow.LEFT;
        for (int i = 0; i < cells.size(); i++) {
            double edge = left;
            double text = left + (i == 0 ? 0 : GAP);
            if (i > 0) {
                flow.leaf().add(drawing -> drawing.down(edge, top, top + height, Strokes.THIN, Role.INK));
            }
            flow.write(cells.get(i).name(), Style.SMALL, text, top + PADDING);
            double at = top + PADDING + Style.SMALL.leading();
            for (String line : cells.get(i).lines()) {
                flow.write(line, Style.STRONG, text, at);
                at += Style.STRONG.leading();
            }
            left += widths[i];
        }
        flow.down(height);
        flow.rule(Strokes.THIN, Role.INK);
    }
}
