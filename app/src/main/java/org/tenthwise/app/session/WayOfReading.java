package org.tenthwise.app.session;

import java.util.Optional;
import org.tenthwise.model.run.Pass;

/** How the pass in hand is read where somebody chose it; otherwise what has been read tells by itself. */
final class WayOfReading {

    private Optional<Boolean> sweep = Optional.empty();
    private boolean readingsFirst;

    void sweep(boolean wanted) {
        sweep = Optional.of(wanted);
    }

    void readingsFirst(boolean wanted) {
        readingsFirst = wanted;
    }

    void forget() {
        sweep = Optional.empty();
        readingsFirst = false;
    }

    /** Whether of a run-out a full turn was asked for, or readings by angle; absent where neither was. */
    Optional<Boolean> sweep() {
        return sweep;
    }

    /** Whether the temperatures wait until everything is read. */
    boolean readingsFirst(Pass pass) {
        return readingsFirst || !pass.standing().isEmpty();
    }
}
