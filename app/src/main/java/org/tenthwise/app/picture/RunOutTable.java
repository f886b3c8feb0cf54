package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The readings of a run-out check in columns under the ring: where, and what was read. */
final class RunOutTable {

    private static final double TEXT = 18;
    /** Height of a row with the figure under its place, and beside it. */
    private static final double TALL_ROW = 54;
    private static final double FLAT_ROW = 30;
    private static final double GAP = 5;
    /** Of the height of the sheet: with more, only the highest and the lowest are written out. */
    private static final double MOST = 0.34;
    private static final String NOTHING_YET = "\u2013";

    private record Cell(Label where, Label what) {
    }

    private final Drawing drawing;
    private final List<Cell> cells;
    /** Where one row does not do, figures stand beside their places. */
    private final boolean flat;
    private final int columns;
    private final double columnWidth;

    RunOutTable(RunOutPicture picture, Drawing drawing) {
        this.drawing = drawing;
        List<Cell> all = cells(picture, picture.readings());
        boolean tooMany = rows(all, true) * drawing.lettered(FLAT_ROW) > MOST * drawing.frame().height();
        this.cells = tooMany ? cells(picture, picture.readings().stream().filter(RunOutPicture.Reading::extreme).toList()) : all;
        this.flat = rows(cells, false) > 1;
        this.columns = columns(cells, flat);
        this.columnWidth = columns == 0 ? 0 : drawing.frame().width() / columns;
    }

    private static List<Cell> cells(RunOutPicture picture, List<RunOutPicture.Reading> readings) {
        List<Cell> cells = new ArrayList<>();
        readings.forEach(reading -> cells.add(cell(reading.angleWords(), reading.value(), reading.extreme())));
        picture.sweep().ifPresent(sweep -> {
            cells.add(cell(sweep.highestWords(), sweep.highest(), true));
            cells.add(cell(sweep.lowestWords(), sweep.lowest(), true));
        });
        return cells;
    }

    private static Cell cell(String where, Optional<RunOutPicture.Sized> value, boolean extreme) {
        Label what = Label.of(value.map(RunOutPicture.Sized::words).orElse(NOTHING_YET), TEXT, Role.INK);
        return new Cell(Label.of(where, TEXT, Role.INK2), extreme ? what.bold() : what);
    }

    private int columns(List<Cell> of, boolean sideBySide) {
        if (of.isEmpty()) {
            return 0;
        }
        double widest = of.stream().mapToDouble(cell -> sideBySide
                ? drawing.width(cell.where()) + drawing.width(cell.what()) + drawing.lettered(GAP)
                : Math.max(drawing.width(cell.where()), drawing.width(cell.what()))).max().orElse(0) + drawing.lettered(2 * GAP);
        int fitting = (int) Math.max(1, Math.min(of.size(), drawing.frame().width() / widest));
        int rows = (of.size() + fitting - 1) / fitting;
        return (of.size() + rows - 1) / rows;
    }

    private int rows(List<Cell> of, boolean sideBySide) {
        int across = columns(of, sideBySide);
        return across == 0 ? 0 : (of.size() + across - 1) / across;
    }

    private double row() {
        return drawing.lettered(flat ? FLAT_ROW : TALL_ROW);
    }

    double height() {
        return rows(cells, flat) * row();
    }

    void draw(double top) {
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = cells.get(i);
            double left = i % columns * columnWidth;
            double y = top + i / columns * row();
            double middle = left + columnWidth / 2;
            if (flat) {
                double start = middle - (drawing.width(cell.where()) + drawing.width(cell.what()) + drawing.lettered(GAP)) / 2;
                Box where = drawing.text(cell.where(), new Point(start, y + row() / 2), Anchor.LEFT);
                drawing.text(cell.what(), new Point(where.right() + drawing.lettered(GAP), y + row() / 2), Anchor.LEFT);
            } else {
                drawing.text(cell.where(), new Point(middle, y + drawing.lettered(16)), Anchor.CENTRE);
                drawing.text(cell.what(), new Point(middle, y + drawing.lettered(39)), Anchor.CENTRE);
            }
            if (i % columns > 0) {
                drawing.line(new Point(left, y + drawing.lettered(6)), new Point(left, y + row() - drawing.lettered(6)), Stroke.RULE,
                        Role.RULE);
            }
        }
    }
}
