package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The readings of a run-out check in one or two columns beside the ring: where, and what was read. */
final class RunOutTable {

    private static final double TEXT = 18;
    private static final double ROW = 26;
    private static final double GAP = 10;
    private static final double MOST_OF_THE_WIDTH = 0.35;
    private static final String NOTHING_YET = "\u2013";

    private record Cell(Label where, Label what) {}

    private final Drawing drawing;
    private final List<Cell> cells;
    private final int rows;

    /** With more readings than there is room for, only the highest and the lowest are written out, or none. */
    RunOutTable(RunOutPicture picture, Drawing drawing) {
        this.drawing = drawing;
        int most = (int) (drawing.frame().height() / drawing.lettered(ROW));
        List<Cell> all = cells(picture, picture.readings());
        List<Cell> extremes = cells(
                picture,
                picture.readings().stream()
                        .filter(RunOutPicture.Reading::extreme)
                        .toList());
        int columns = all.size() <= most ? 1 : 2;
        boolean fits = all.size() <= most * columns
                && columns * columnWidth(all)
                        <= MOST_OF_THE_WIDTH * drawing.frame().width();
        this.cells = fits ? all : extremes.size() <= most ? extremes : List.of();
        this.rows = fits ? (cells.size() + columns - 1) / columns : cells.size();
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

    private double columnWidth(List<Cell> of) {
        double where = of.stream()
                .mapToDouble(cell -> drawing.width(cell.where()))
                .max()
                .orElse(0);
        double what = of.stream()
                .mapToDouble(cell -> drawing.width(cell.what()))
                .max()
                .orElse(0);
        return where + what + drawing.lettered(3 * GAP);
    }

    double width() {
        return cells.isEmpty() ? 0 : columns() * columnWidth(cells) - drawing.lettered(GAP);
    }

    private int columns() {
        return (cells.size() + rows - 1) / rows;
    }

    /** In the lower right corner of the sheet. */
    Box box() {
        Box frame = drawing.frame().box();
        return new Box(
                frame.right() - width(), frame.bottom() - rows * drawing.lettered(ROW), frame.right(), frame.bottom());
    }

    void draw() {
        if (cells.isEmpty()) {
            return;
        }
        Box box = box();
        double row = drawing.lettered(ROW);
        for (int i = 0; i < cells.size(); i++) {
            double left = box.left() + i / rows * columnWidth(cells) + drawing.lettered(GAP);
            double y = box.top() + (i % rows + 0.5) * row;
            drawing.text(cells.get(i).where(), new Point(left, y), Anchor.LEFT);
            drawing.text(
                    cells.get(i).what(),
                    new Point(left + columnWidth(cells) - drawing.lettered(2 * GAP), y),
                    Anchor.RIGHT);
        }
        for (int column = 0; column < columns(); column++) {
            double x = box.left() + column * columnWidth(cells);
            drawing.down(x, box.top(), box.bottom(), Stroke.RULE, Role.RULE);
        }
    }
}
