package org.tenthwise.app.ui.keys;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * A key whose meaning has just changed does not act: a finger that was coming down for what it meant before does
 * nothing by chance.
 */
public final class Settling {

    private static final Duration DEAF = Duration.ofMillis(400);
    /** Answers lie where those of the check before lay, and mean another check: a finger that bounces gives none. */
    public static final Duration LONGER = Duration.ofMillis(800);

    private final Clock clock;
    private final Duration deaf;
    private Optional<Object> meaning = Optional.empty();
    private Instant since = Instant.MIN;

    public Settling(Clock clock) {
        this(clock, DEAF);
    }

    /** @param deaf how long it does not act */
    public Settling(Clock clock, Duration deaf) {
        this.clock = clock;
        this.deaf = deaf;
    }

    /** @param now compared by {@code equals} with what the key meant before */
    public void means(Object now) {
        if (!meaning.equals(Optional.of(now))) {
            since = clock.instant();
            meaning = Optional.of(now);
        }
    }

    public boolean settled() {
        return !clock.instant().isBefore(since.plus(deaf));
    }
}
