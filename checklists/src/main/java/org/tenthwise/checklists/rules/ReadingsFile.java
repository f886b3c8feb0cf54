package org.tenthwise.checklists.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.OccasionSaid;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Word;

/**
 * A readings file: what is read and answered on one part, and what it should come to.
 *
 * @param by who does it all
 * @param events what follows the beginning, in order; one that is struck out is named by its {@link #place}
 * @param meant which of the events, counted from 0, are meant as they are: figures although far off, and of a machine
 *     its usual aim
 * @param occasion what the run is for; the beginning itself does not say it
 * @param expected verdict by number of the step; empty where the file does not say
 */
public record ReadingsFile(
        Event.Begun begun,
        String by,
        List<Event> events,
        Set<Integer> meant,
        Map<Integer, VerdictKind> expected,
        Optional<Outcome> outcome,
        OccasionSaid occasion) {

    public ReadingsFile {
        events = List.copyOf(events);
        meant = Set.copyOf(meant);
        expected = Map.copyOf(expected);
    }

    /** The same as far as its first events. */
    public ReadingsFile begunWith(int first) {
        return new ReadingsFile(begun, by, events.subList(0, first), meant, expected, outcome, occasion);
    }

    /**
     * Something that did not come to what the file expects.
     *
     * @param step absent for the outcome of the whole
     * @param expected as a readings file writes it, like {@code found}
     */
    public record Unlike(Optional<Integer> step, String expected, String found) {}

    /** In the order of the plan, the outcome last. */
    public List<Unlike> unlike(Sheet sheet) {
        List<Unlike> unlike = new ArrayList<>();
        for (Line line : sheet.lines()) {
            VerdictKind found = line.finding().verdict().standing();
            Optional.ofNullable(expected.get(line.step().number()))
                    .filter(standing -> standing != found)
                    .ifPresent(standing -> unlike.add(
                            new Unlike(Optional.of(line.step().number()), Word.spaced(standing), Word.spaced(found))));
        }
        outcome.filter(wanted -> wanted != sheet.outcome())
                .ifPresent(wanted ->
                        unlike.add(new Unlike(Optional.empty(), Word.spaced(wanted), Word.spaced(sheet.outcome()))));
        return unlike;
    }

    /** Which entry an event would be in a ledger with nothing in it but this. The beginning is the first. */
    public static long place(int event) {
        return event + 2L;
    }
}
