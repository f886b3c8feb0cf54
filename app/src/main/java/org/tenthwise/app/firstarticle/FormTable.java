package org.tenthwise.app.firstarticle;

import java.util.ArrayList;
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

    /**
     * With more columns, the same in every row: behind the last head of a lower number.
     *
     * @param more heads that begin with the number of a field, in their order
     */
    FormTable with(List<String> more, List<String> cells) {
        int place = (int) heads.stream()
                .takeWhile(head -> number(head) < number(more.get(0)))
                .count();
        return new FormTable(
                inserted(heads, place, more),
                rows.stream().map(row -> inserted(row, place, cells)).toList(),
                outstanding);
    }

    /** Past every field where it has none. */
    private static int number(String head) {
        String first = head.split(" ", 2)[0];
        return first.matches("\\d+") ? Integer.parseInt(first) : Integer.MAX_VALUE;
    }

    private static List<String> inserted(List<String> into, int place, List<String> more) {
        List<String> whole = new ArrayList<>(into);
        whole.addAll(place, more);
        return whole;
    }
}
