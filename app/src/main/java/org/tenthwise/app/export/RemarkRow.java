package org.tenthwise.app.export;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;

/**
 * A doubt, a note, or why a pass was cut on with something missing, as files that programs read have it.
 *
 * @param step 0 for the whole run
 * @param kind {@code doubt}, {@code note} or {@code cut-on-these}
 */
record RemarkRow(Entry entry, int step, String kind, String words) {

    /** Those of a run, in the order they were entered. */
    static List<RemarkRow> of(Run run) {
        return run.entries().stream()
                .map(RemarkRow::of)
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<RemarkRow> of(Entry entry) {
        if (entry.event() instanceof Event.DoubtFlagged doubt) {
            return Optional.of(new RemarkRow(entry, doubt.step(), "doubt", doubt.words()));
        }
        if (entry.event() instanceof Event.CutOnThese signed) {
            return Optional.of(new RemarkRow(entry, signed.step(), "cut-on-these", signed.reason()));
        }
        return entry.event() instanceof Event.NoteMade note
                ? Optional.of(new RemarkRow(entry, note.step(), "note", note.words()))
                : Optional.empty();
    }
}
