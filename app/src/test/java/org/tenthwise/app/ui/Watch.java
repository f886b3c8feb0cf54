package org.tenthwise.app.ui;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/**
 * A clock at the machine, begun at 07:31, that goes on by two seconds whenever it is looked at, until it is held; then
 * it is moved by hand.
 */
public final class Watch extends Clock {

    private static final Duration UNHURRIED = Duration.ofSeconds(2);

    private Instant now = Instant.parse("2026-11-25T06:31:00Z");
    private boolean held;

    /** One that is moved by hand from the beginning. */
    public static Watch held() {
        Watch watch = new Watch();
        watch.hold();
        return watch;
    }

    public void hold() {
        held = true;
    }

    public void pass(long millis) {
        now = now.plusMillis(millis);
    }

    @Override
    public Instant instant() {
        now = held ? now : now.plus(UNHURRIED);
        return now;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.ofHours(1);
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }
}
