package org.tenthwise.app.ui.run;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;

/**
 * Whether what stands on the pad was refused: the next character then begins another figure. What comes on its heels is
 * no answer to it.
 */
final class RefusedFigure {

    /** Nobody has read a sentence and measured anew in less. */
    private static final Duration HEELS = Duration.ofSeconds(1);

    private final Clock clock;
    private boolean standing;
    private Instant at = Instant.MIN;

    RefusedFigure(Clock clock) {
        this.clock = clock;
    }

    void ofWhatStands() {
        standing = true;
        at = clock.instant();
    }

    void lift() {
        standing = false;
    }

    boolean stands() {
        return standing;
    }

    /** Whether something that comes now comes too soon to be an answer. */
    boolean onItsHeels() {
        return standing && clock.instant().isBefore(at.plus(HEELS));
    }
}
