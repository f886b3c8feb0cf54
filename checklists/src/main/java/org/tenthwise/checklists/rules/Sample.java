package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.verdict.Standing;

/**
 * A readings file: what is read and answered on one part, and what it should come to.
 *
 * @param by       who does it all
 * @param events   what follows the beginning, in order; one that is struck out is named by its {@link #place}
 * @param meant    which of the events, counted from 0, are meant as they are although far off
 * @param expected verdict by number of the step; empty where the file does not say
 */
public record Sample(Event.Begun begun, String by, List<Event> events, Set<Integer> meant, Map<Integer, Standing> expected,
                     Optional<Outcome> outcome) {

    public Sample {
        events = List.copyOf(events);
        meant = Set.copyOf(meant);
        expected = Map.copyOf(expected);
    }

    /** Which entry an event would be in a ledger with nothing in it but this. The beginning is the first. */
    public static long place(int event) {
        return event + 2L;
    }
}
