package org.tenthwise.model.run;

import java.util.Optional;

/**
 * Which step an entry changes the finding of: by what was read or answered there, by what of it was struck out, by a
 * new pass, by rework or repair. A note, a doubt, a gauge taken or set and any other signature change none.
 */
final class Changes {

    private final Run run;

    Changes(Run run) {
        this.run = run;
    }

    /** Absent where the entry changes no finding. */
    Optional<Integer> step(Entry entry) {
        return entry.event()
                .as(Event.StruckOut.class)
                .map(out -> run.entry(out.entry())
                        .map(Entry::event)
                        .filter(Event::canBeStruckOut)
                        .flatMap(Event::at))
                .orElseGet(() -> Optional.of(entry.event())
                        .filter(Event::changesTheFinding)
                        .flatMap(Event::at));
    }
}
