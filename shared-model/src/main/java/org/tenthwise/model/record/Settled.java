package org.tenthwise.model.record;

import java.util.List;
import java.util.ListIterator;
import java.util.Optional;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Disposing;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Run;

/**
 * A step that is settled, and what settled it.
 *
 * @param by of one that passed, the last entry before which it had not; of any other, the disposition in force
 */
public record Settled(Line line, Entry by) {

    /** How a step came to be settled. */
    public enum How {
        PASSED,
        CONCEDED,
        CARRIED_ON
    }

    /** Absent where it is not settled as the sheet stands. */
    static Optional<Settled> of(Sheet sheet, Line line) {
        if (!line.settled()) {
            return Optional.empty();
        }
        Optional<Entry> by = line.finding().verdict().passed()
                ? passedBy(sheet, line.step())
                : line.dispositions().stream()
                        .filter(Disposing::inForce)
                        .map(Disposing::entry)
                        .findFirst();
        return by.map(entry -> new Settled(line, entry));
    }

    /** What belongs to other steps than these changes nothing of it. */
    private static Optional<Entry> passedBy(Sheet sheet, Step step) {
        Run run = sheet.run();
        List<Integer> touchedBy = step.check().touchedBy();
        ListIterator<Entry> back = run.entries().listIterator(run.entries().size());
        while (back.hasPrevious()) {
            Entry entry = back.previous();
            boolean touches = run.step(entry)
                    .filter(number -> number == step.number() || touchedBy.contains(number))
                    .isPresent();
            if (touches && !Assessment.passedBefore(entry, sheet.plan(), step, run)) {
                return Optional.of(entry);
            }
        }
        return Optional.empty();
    }

    public How how() {
        return line.finding().verdict().passed() ? How.PASSED : line.conceded() ? How.CONCEDED : How.CARRIED_ON;
    }

    /** Who entered what it passed with, or who signed for it. */
    public String person() {
        return by.event().names().orElseGet(by::by);
    }
}
