package org.tenthwise.app.bundle;

import java.time.LocalDate;
import java.util.Optional;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;

/**
 * What a bundle is asked for: one run; or the runs of a part number, or those closed in a period, or both.
 *
 * @param from first day a run may have been closed
 * @param to last day
 */
public record Scope(Optional<String> run, Optional<String> part, Optional<LocalDate> from, Optional<LocalDate> to) {

    /** One run, by its name in the ledger. */
    public static Scope ofRun(String run) {
        return new Scope(Optional.of(run), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** Whether it leaves everything open. */
    public boolean isOfNothing() {
        return run.isEmpty() && part.isEmpty() && from.isEmpty() && to.isEmpty();
    }

    /** Whether a run is in it: the day of its closing is that of the place where it was closed. */
    public boolean takes(KeptEntries kept, String id) {
        if (run.isPresent()) {
            return run.get().equals(id);
        }
        return kept.entries(id).stream()
                        .findFirst()
                        .flatMap(first -> first.event().as(Event.Begun.class))
                        .filter(begun ->
                                part.isEmpty() || part.get().equals(begun.part().number()))
                        .isPresent()
                && (from.isEmpty() && to.isEmpty() || isClosedInThePeriod(kept, id));
    }

    private boolean isClosedInThePeriod(KeptEntries kept, String id) {
        return kept.entries(id).stream()
                .filter(entry -> entry.event().as(Event.Closed.class).isPresent())
                .findFirst()
                .map(Entry::at)
                .map(at -> at.toLocalDate())
                .filter(day -> from.isEmpty() || !day.isBefore(from.get()))
                .filter(day -> to.isEmpty() || !day.isAfter(to.get()))
                .isPresent();
    }
}
