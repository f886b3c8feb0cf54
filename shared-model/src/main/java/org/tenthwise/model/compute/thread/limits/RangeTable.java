package org.tenthwise.model.compute.thread.limits;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.table.Table;

/**
 * A table of tolerances in micrometres by pitch, and where need be by range of diameters, in millimetres.
 *
 * @param rows the figures under every heading; none where the standard has nothing
 */
record RangeTable(List<Map<String, BigDecimal>> rows) {

    static RangeTable beside(String name) {
        return new RangeTable(Table.beside(RangeTable.class, name).rows().stream()
                .map(RangeTable::figures)
                .toList());
    }

    private static Map<String, BigDecimal> figures(Map<String, String> row) {
        Map<String, BigDecimal> figures = new HashMap<>();
        row.forEach((heading, cell) -> {
            if (!cell.equals(Table.NOTHING)) {
                figures.put(heading, new BigDecimal(cell));
            }
        });
        return figures;
    }

    /** The figure of a pitch, in millimetres; absent if the standard has none. */
    Optional<BigDecimal> at(BigDecimal pitch, String heading) {
        return rows.stream()
                .filter(row -> row.get("pitch").compareTo(pitch) == 0)
                .findFirst()
                .flatMap(row -> figure(row, heading));
    }

    /** The figure of a pitch in the range of the diameter, in millimetres; absent if the standard has none. */
    Optional<BigDecimal> at(BigDecimal diameter, BigDecimal pitch, String heading) {
        return rows.stream()
                .filter(row -> row.get("pitch").compareTo(pitch) == 0
                        && row.get("above").compareTo(diameter) < 0
                        && diameter.compareTo(row.get("to")) <= 0)
                .findFirst()
                .flatMap(row -> figure(row, heading));
    }

    private static Optional<BigDecimal> figure(Map<String, BigDecimal> row, String heading) {
        return Optional.ofNullable(row.get(heading)).map(micrometres -> micrometres.movePointLeft(3));
    }
}
