package org.tenthwise.model.compute.thread.limits;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.table.Table;

/** A table of tolerances in micrometres by pitch, and where need be by range of diameters, in millimetres. */
record RangeTable(Table table) {

    static RangeTable beside(String name) {
        return new RangeTable(Table.beside(RangeTable.class, name));
    }

    /** The figure of a pitch, in millimetres; absent if the standard has none. */
    Optional<BigDecimal> at(BigDecimal pitch, String heading) {
        return figure(
                table.rows().stream()
                        .filter(row -> isEqual(row, "pitch", pitch))
                        .findFirst(),
                heading);
    }

    /** The figure of a pitch in the range of the diameter, in millimetres; absent if the standard has none. */
    Optional<BigDecimal> at(BigDecimal diameter, BigDecimal pitch, String heading) {
        return figure(
                table.rows().stream()
                        .filter(row -> new BigDecimal(row.get("above")).compareTo(diameter) < 0
                                && diameter.compareTo(new BigDecimal(row.get("to"))) <= 0)
                        .filter(row -> isEqual(row, "pitch", pitch))
                        .findFirst(),
                heading);
    }

    private static boolean isEqual(Map<String, String> row, String heading, BigDecimal figure) {
        return new BigDecimal(row.get(heading)).compareTo(figure) == 0;
    }

    private static Optional<BigDecimal> figure(Optional<Map<String, String>> row, String heading) {
        return row.flatMap(found -> Optional.ofNullable(found.get(heading)))
                .filter(cell -> !cell.equals(Table.NOTHING))
                .map(cell -> new BigDecimal(cell).movePointLeft(3));
    }
}
