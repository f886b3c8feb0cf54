package org.tenthwise.app.firstarticle;

import java.util.List;
import java.util.Set;

/**
 * One of the forms as a table.
 *
 * @param heads what stands over each column
 * @param rows as long as the heads, a text each; empty where nothing is to be said
 * @param outstanding places of the rows that must not be passed over: what does not conform, or is not shown to
 */
public record FormTable(List<String> heads, List<List<String>> rows, Set<Integer> outstanding) {

    public FormTable {
        heads = List.copyOf(heads);
        rows = rows.stream().map(List::copyOf).toList();
        outstanding = Set.copyOf(outstanding);
    }

    FormTable(List<String> heads, List<List<String>> rows) {
        this(heads, rows, Set.of());
    }
}
