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
        if (entry.event() instanceof Event.StruckOut out) {
            return run.entry(out.entry())
                    .map(Entry::event)
                    .filter(gone -> gone instanceof Event.Taken || gone instanceof Event.GaugeSet)
                    .flatMap(Event::at);
        }
        return Optional.of(entry.event()).filter(Changes::changes).flatMap(Event::at);
    }

    private static boolean changes(Event event) {
        return event instanceof Event.Taken
                || event instanceof Event.PassBegun
                || event instanceof Event.DispositionSigned disposed
                        && disposed.disposition().changesTheWork();
    }
}
