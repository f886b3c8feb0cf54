package org.tenthwise.app.firstarticle;

import java.util.List;

/**
 * One of the forms as a table.
 *
 * @param heads what stands over each column
 * @param rows as long as the heads, a text each; empty where nothing is to be said
 */
public record FormTable(List<String> heads, List<List<String>> rows) {

    public FormTable {
        heads = List.copyOf(heads);
        rows = rows.stream().map(List::copyOf).toList();
    }
}
