package org.tenthwise.checklists.drafting;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A line of a list.
 *
 * @param place in the file, from 1; the headings are one
 * @param cells what is filled in
 */
record ListLine(int place, Map<ListColumn, String> cells) {

    static ListLine of(int place, List<String> row, Map<ListColumn, Integer> columns) {
        return new ListLine(
                place,
                columns.entrySet().stream()
                        .filter(column -> column.getValue() < row.size()
                                && !row.get(column.getValue()).isBlank())
                        .collect(Collectors.toMap(Map.Entry::getKey, column -> row.get(column.getValue())
                                .strip())));
    }

    Optional<String> at(ListColumn column) {
        return Optional.ofNullable(cells.get(column));
    }
}
