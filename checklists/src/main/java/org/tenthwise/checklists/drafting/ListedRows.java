package org.tenthwise.checklists.drafting;

import java.util.List;
import java.util.Map;
import org.tenthwise.model.words.Message;

/**
 * The rows of a list of characteristics, the headings among them.
 *
 * @param rows the cells as they are written
 * @param refused why a row cannot be taken whatever it says, by its place in {@code rows}
 */
public record ListedRows(List<List<String>> rows, Map<Integer, Message> refused) {

    public ListedRows {
        rows = List.copyOf(rows);
        refused = Map.copyOf(refused);
    }

    /** Rows against none of which anything is known. */
    public static ListedRows of(List<List<String>> rows) {
        return new ListedRows(rows, Map.of());
    }
}
