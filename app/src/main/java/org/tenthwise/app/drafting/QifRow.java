package org.tenthwise.app.drafting;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.checklists.drafting.ListColumn;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Word;

/**
 * What a list has of a characteristic.
 *
 * @param said by its column
 * @param refused why it cannot be taken
 */
record QifRow(Map<ListColumn, String> said, Optional<Message> refused) {

    private static final List<ListColumn> COLUMNS = List.of(
            ListColumn.NUMBER,
            ListColumn.REQUIREMENT,
            ListColumn.SHEET,
            ListColumn.ZONE,
            ListColumn.DESIGNATOR,
            ListColumn.UNIT,
            ListColumn.LOWER,
            ListColumn.UPPER,
            ListColumn.COUNT,
            ListColumn.NOTE);

    static final List<String> HEADINGS = COLUMNS.stream().map(Word::of).toList();

    QifRow {
        said = Map.copyOf(said);
    }

    List<String> cells() {
        return COLUMNS.stream().map(column -> said.getOrDefault(column, "")).toList();
    }
}
