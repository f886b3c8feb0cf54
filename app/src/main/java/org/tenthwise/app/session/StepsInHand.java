package org.tenthwise.app.session;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;
import org.tenthwise.app.history.Progress;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;

/**
 * Which step each run had in hand last, so that a client that is opened again goes on there: a bookmark, no evidence.
 * Used from the thread of the ledger.
 */
public interface StepsInHand {

    /** Number of the step; absent where it was not kept. */
    OptionalInt of(String run);

    void keep(String run, int step);

    /** The step a run goes on at: the one that was in hand last, unless it is settled or held by now. */
    default Step goesOn(Sheet sheet) {
        return of(sheet.run().id()).stream()
                .boxed()
                .flatMap(number -> sheet.lines().stream()
                        .filter(line -> line.step().number() == number && line.open() && !line.held()))
                .map(Line::step)
                .findFirst()
                .orElseGet(() -> Progress.whereItStopped(sheet));
    }

    /** Forgets with the process: for the demo, commands and tests. */
    static StepsInHand inMemory() {
        Map<String, Integer> steps = new HashMap<>();
        return new StepsInHand() {
            @Override
            public OptionalInt of(String run) {
                return steps.containsKey(run) ? OptionalInt.of(steps.get(run)) : OptionalInt.empty();
            }

            @Override
            public void keep(String run, int step) {
                steps.put(run, step);
            }
        };
    }
}
