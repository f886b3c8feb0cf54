package org.tenthwise.app.session;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.history.LastPart;
import org.tenthwise.app.history.LastPartQuery;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;

/**
 * What the steps of the run in hand came to on the part before, each looked up once. What is done in this run changes
 * none of it, but where a setting that was wrong is struck out of other runs too.
 */
final class LastParts {

    private final RunBook book;
    private final Map<Integer, Optional<LastPart>> known = new HashMap<>();
    private long othersChanged;

    LastParts(RunBook book) {
        this.book = book;
    }

    Optional<LastPart> at(Step step) {
        if (othersChanged != book.othersChanged()) {
            othersChanged = book.othersChanged();
            known.clear();
        }
        return known.computeIfAbsent(step.number(), number -> lookUp(step));
    }

    /** What is in hand is never held up by it: where it cannot be read, nothing is told. */
    private Optional<LastPart> lookUp(Step step) {
        Event.Begun begun = book.run().begun();
        try {
            return book.kept().history().lastPart(new LastPartQuery(begun.part(), begun.serial(), step, closed()));
        } catch (CouldNotRead | IllegalStateException e) {
            return Optional.empty();
        }
    }

    /** Place in the ledger at which the run was closed; behind all others while it is open. */
    private long closed() {
        return book.run().entries().stream()
                .filter(entry -> entry.event().as(Event.Closed.class).isPresent())
                .map(Entry::seq)
                .findFirst()
                .orElse(Long.MAX_VALUE);
    }
}
