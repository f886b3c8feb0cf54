package org.tenthwise.model.run;

import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * What the store knew of a part number when a run of it was begun.
 *
 * @param accepted the last accepted record; absent where there was none
 * @param lastMade when something was last made or measured of it; absent where nothing was
 */
public record Earlier(Optional<AcceptedBefore> accepted, Optional<OffsetDateTime> lastMade) {

    /** After so long without production a first article is due again: SAE AS9102 Rev B, 4.6, a lapse of two years. */
    private static final int MONTHS = 24;

    /** Of a part number that is new to the store. */
    public static final Earlier NOTHING = new Earlier(Optional.empty(), Optional.empty());

    /** Whether more than two years lie between the last production and {@code begun}. */
    public boolean isLapsed(OffsetDateTime begun) {
        return lastMade.filter(last -> last.plusMonths(MONTHS).isBefore(begun)).isPresent();
    }
}
