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

    private final Clock clock;
    private Optional<Object> meaning = Optional.empty();
    private Instant since = Instant.MIN;

    Settling(Clock clock) {
        this.clock = clock;
    }

    /** @param now compared by {@code equals} with what the key meant before */
    void means(Object now) {
        if (!meaning.equals(Optional.of(now))) {
            since = clock.instant();
            meaning = Optional.of(now);
        }
    }

    boolean settled() {
        return !clock.instant().isBefore(since.plus(DEAF));
    }
}
