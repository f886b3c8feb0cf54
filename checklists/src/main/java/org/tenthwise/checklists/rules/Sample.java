package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.verdict.Standing;

/**
 * A readings file: what is read and answered on one part, and what it should come to.
 *
 * @param by       who does it all
 * @param events   what follows the beginning, in order
 * @param expected verdict by number of the step; empty where the file does not say
 */
public record Sample(Event.Begun begun, String by, List<Event> events, Map<Integer, Standing> expected,
                     Optional<Outcome> outcome) {

    public Sample {
        events = List.copyOf(events);
        expected = Map.copyOf(expected);
    }
}
