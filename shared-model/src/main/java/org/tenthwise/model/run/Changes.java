package org.tenthwise.model.run;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Which step an entry changes the finding of: by what was read or answered there, by what of it was struck out, by a new
 * pass, by rework or repair. A note, a doubt, a gauge taken or set and any other signature change none.
 */
final class Changes {

    private final Map<Long, Entry> bySeq;

    Changes(List<Entry> entries) {
        bySeq = entries.stream().collect(Collectors.toMap(Entry::seq, Function.identity(), (first, second) -> first));
    }

    /** Absent where the entry changes no finding. */
    Optional<Integer> step(Entry entry) {
        if (entry.event() instanceof Event.StruckOut out) {
            return Optional.ofNullable(bySeq.get(out.entry())).flatMap(Changes::struck);
        }
        if (entry.event() instanceof Event.PassBegun pass) {
            return Optional.of(pass.step());
        }
        return entry.event() instanceof Event.Disposed disposed && disposed.disposition().changesTheWork()
                ? Optional.of(disposed.step()) : taken(entry.event());
    }

    private static Optional<Integer> struck(Entry gone) {
        return gone.event() instanceof Event.GaugeSet set ? Optional.of(set.step()) : taken(gone.event());
    }

    private static Optional<Integer> taken(Event event) {
        if (event instanceof Event.ReadingTaken taken) {
            return Optional.of(taken.step());
        }
        if (event instanceof Event.TemperatureTaken taken) {
            return Optional.of(taken.step());
        }
        return event instanceof Event.Answered answered ? Optional.of(answered.step()) : Optional.empty();
    }
}
