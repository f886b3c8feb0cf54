package org.tenthwise.app.export;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Measured;

/** One row of the table in the making. */
final class CsvRow {

    private final Map<CsvColumn, String> cells;
    private final Unit unit;
    private final int places;

    private CsvRow(Map<CsvColumn, String> cells, Unit unit, int places) {
        this.cells = new EnumMap<>(cells);
        this.unit = unit;
        this.places = places;
    }

    /** An empty one. */
    static CsvRow in(Unit unit) {
        return new CsvRow(new EnumMap<>(CsvColumn.class), unit, 0);
    }

    CsvRow copy() {
        return copy(unit, places);
    }

    /**
     * The same so far, with its sizes in another unit.
     *
     * @param places those the sizes are known to
     */
    CsvRow copy(Unit other, int places) {
        return new CsvRow(cells, other, places);
    }

    List<String> cells() {
        return Arrays.stream(CsvColumn.values())
                .map(column -> cells.getOrDefault(column, ""))
                .toList();
    }

    void text(CsvColumn column, String text) {
        cells.put(column, CsvText.safe(text));
    }

    void number(CsvColumn column, BigDecimal number) {
        cells.put(column, number.toPlainString());
    }

    void figure(CsvColumn column, Written written) {
        cells.put(column, written.unit().text(written.figure()));
    }

    void number(CsvColumn column, long number) {
        number(column, BigDecimal.valueOf(number));
    }

    void size(CsvColumn column, Length length) {
        size(column, length, places);
    }

    void size(CsvColumn column, Length length, int known) {
        cells.put(column, WorkedOut.figure(length, unit, known));
    }

    void size(CsvColumn column, Measured measured) {
        cells.put(column, WorkedOut.size(measured, unit));
    }

    /** To how many places the size of a reading is known. */
    int known(Measured measured) {
        return WorkedOut.known(measured, unit);
    }

    void time(CsvColumn column, OffsetDateTime time) {
        cells.put(column, said(time));
    }

    /** As the table writes a moment. */
    static String said(OffsetDateTime time) {
        return time.truncatedTo(ChronoUnit.SECONDS).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    }
}
