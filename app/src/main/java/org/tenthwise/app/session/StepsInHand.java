package org.tenthwise.app.session;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;

/**
 * Which step each run had in hand last, so that a client that is opened again goes on there: a bookmark, no evidence.
 * Used from the thread of the ledger.
 */
public interface StepsInHand {

    /** Number of the step; absent where it was not kept. */
    OptionalInt of(String run);

    void keep(String run, int step);

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
