package org.tenthwise.app.series;

import java.util.List;
import java.util.Map;
import org.tenthwise.app.history.ToolChange;

/** What was said of tools, in the order it was said. */
final class ToolsOfParts {

    private final List<ToolChange> changes;

    /** @param byRun by the beginning of the run it was said in */
    ToolsOfParts(Map<Long, List<ToolChange>> byRun) {
        changes = byRun.values().stream()
                .flatMap(List::stream)
                .sorted((one, other) -> Long.compare(one.seq(), other.seq()))
                .toList();
    }

    /** Whether anything was said behind an entry of the ledger, up to another, that touches an operation. */
    boolean changedBetween(long after, long upTo, int operation) {
        for (int i = firstBehind(after); i < changes.size() && changes.get(i).seq() <= upTo; i++) {
            int of = changes.get(i).operation();
            if (of == 0 || of == operation) {
                return true;
            }
        }
        return false;
    }

    private int firstBehind(long seq) {
        int from = 0;
        int to = changes.size();
        while (from < to) {
            int middle = (from + to) / 2;
            if (changes.get(middle).seq() <= seq) {
                from = middle + 1;
            } else {
                to = middle;
            }
        }
        return from;
    }
}
