package org.tenthwise.app.command;

import java.util.ArrayList;
import java.util.List;

/** Rows of texts in columns, each as wide as its longest. */
final class Columns {

    private static final String GAP = "  ";

    private Columns() {}

    /** @param rows each of as many texts as the first */
    static List<String> laid(List<List<String>> rows) {
        List<Integer> widths = new ArrayList<>();
        for (int column = 0; column < rows.get(0).size(); column++) {
            int here = column;
            widths.add(
                    rows.stream().mapToInt(row -> row.get(here).length()).max().orElseThrow());
        }
        return rows.stream().map(row -> laid(row, widths)).toList();
    }

    private static String laid(List<String> row, List<Integer> widths) {
        StringBuilder laid = new StringBuilder();
        for (int column = 0; column < row.size(); column++) {
            laid.append(row.get(column))
                    .append(" ".repeat(widths.get(column) - row.get(column).length()))
                    .append(GAP);
        }
        return laid.toString().stripTrailing();
    }
}
