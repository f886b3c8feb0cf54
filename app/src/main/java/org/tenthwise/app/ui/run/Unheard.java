package org.tenthwise.app.ui.run;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;

/**
 * What was typed while nothing took figures. The rest of such a figure belongs to it, whatever is asked for meanwhile.
 */
final class Unheard {

    /** No gauge pauses so long within a figure. */
    private static final Duration PAUSE = Duration.ofSeconds(1);

    private final Clock clock;
    private String typed = "";
    private Instant at = Instant.MIN;

    Unheard(Clock clock) {
        this.clock = clock;
    }

    /** Whether a character that comes now goes on with it. */
    boolean goesOn() {
        return !typed.isEmpty() && clock.instant().isBefore(at.plus(PAUSE));
    }

    void character(String character) {
        typed = goesOn() ? typed + character : character;
        at = clock.instant();
    }

    /** What stood on the pad when its step was left is the beginning of it. */
    void begin(String begun) {
        typed += begun;
        at = clock.instant();
    }

    String typed() {
        return typed;
    }

    void forget() {
        typed = "";
    }
}
