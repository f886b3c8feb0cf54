package org.tenthwise.app.ui.run;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * A key whose meaning has just changed does not act: a finger that was coming down for what it meant before does
 * nothing by chance.
 */
final class Settling {

    private static final Duration DEAF = Duration.ofMillis(400);
    /** Answers lie where those of the check before lay, and mean another check: a finger that bounces gives none. */
    static final Duration LONGER = Duration.ofMillis(800);

    private final Clock clock;
    private final Duration deaf;
    private Optional<Object> meaning = Optional.empty();
    private Instant since = Instant.MIN;

    Settling(Clock clock) {
        this(clock, DEAF);
    }

    /** @param deaf how long it does not act */
    Settling(Clock clock, Duration deaf) {
        this.clock = clock;
        this.deaf = deaf;
    }

    /** @param now compared by {@code equals} with what the key meant before */
    void means(Object now) {
        if (!meaning.equals(Optional.of(now))) {
            since = clock.instant();
            meaning = Optional.of(now);
        }
    }

    boolean settled() {
        return !clock.instant().isBefore(since.plus(deaf));
    }
}
