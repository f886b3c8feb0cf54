package org.tenthwise.model.run;

import java.util.Optional;

/**
 * What somebody said of a step or of the whole run: a doubt, a note, or why a pass was cut on with something missing.
 *
 * @param step 0 for the whole run
 */
public record Remark(Entry entry, int step, Kind kind, String words) {

    /** What a remark is. */
    public enum Kind {
        DOUBT,
        NOTE,
        CUT_ON_THESE
    }

    static Optional<Remark> of(Entry entry) {
        Event event = entry.event();
        return event.as(StepEvent.DoubtFlagged.class)
                .map(doubt -> new Remark(entry, doubt.step(), Kind.DOUBT, doubt.words()))
                .or(() -> event.as(StepEvent.NoteMade.class)
                        .map(note -> new Remark(entry, note.step(), Kind.NOTE, note.words())))
                .or(() -> event.as(StepEvent.CutOnThese.class)
                        .map(signed -> new Remark(entry, signed.step(), Kind.CUT_ON_THESE, signed.reason())));
    }
}
