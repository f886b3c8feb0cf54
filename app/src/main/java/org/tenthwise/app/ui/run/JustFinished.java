package org.tenthwise.app.ui.run;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.session.State;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;

/**
 * The check that was finished last and gave way to the next: it stays in sight there until the next reading or answer.
 * Where the first figure of the next check took its place, that is the one after that figure. Nothing waits for a time.
 */
final class JustFinished {

    private Optional<Integer> step = Optional.empty();
    private long takenHere;
    private boolean chosen;

    /** The next check to be shown was chosen by hand: nothing gave way to it. */
    void chosen() {
        chosen = true;
    }

    /** Another state of the run is shown. */
    void shown(State before, State now) {
        if (!now.inHand().equals(before.inHand())) {
            step = workedLast(before, now).filter(left -> !chosen);
            takenHere = taken(now);
        } else if (taken(now) != takenHere) {
            step = Optional.empty();
        }
        chosen = false;
    }

    /** As it stands now; absent where it is settled no more. */
    Optional<Line> in(State now) {
        return step.map(now.sheet()::line).filter(Line::settled);
    }

    /**
     * The check at which something was found last, beside the one in hand: the one that was in hand before, or one that
     * a figure opened and filled since.
     */
    private static Optional<Integer> workedLast(State before, State now) {
        List<Entry> entries = now.sheet().run().entries();
        int known = before.sheet().run().entries().size();
        for (int i = entries.size() - 1; i >= 0; i--) {
            Event event = entries.get(i).event();
            Optional<Integer> at = now.sheet().run().step(entries.get(i));
            boolean finds = event.changesTheFinding()
                    || event.as(Event.StruckOut.class).isPresent()
                    || event.names().isPresent();
            if (finds && at.filter(number -> number != now.inHand().number()).isPresent()) {
                boolean since = i >= known;
                return at.filter(number -> since || number == before.inHand().number());
            }
        }
        return Optional.empty();
    }

    private static long taken(State now) {
        return now.line().passes().stream()
                .mapToLong(
                        pass -> (long) pass.readings().size() + pass.answers().size())
                .sum();
    }
}
