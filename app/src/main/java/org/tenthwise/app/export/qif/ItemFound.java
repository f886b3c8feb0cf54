package org.tenthwise.app.export.qif;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * What was found of one item: of a characteristic, or of one of several alike.
 *
 * @param which of several alike; absent for all there is
 * @param value that is judged; absent where several together are, and before it is known
 * @param places the value is known to
 * @param ends the least and the greatest; empty where there is one figure alone
 * @param sure standard uncertainty of the value
 * @param bonus what a measured size adds to the limit
 * @param readings behind it
 */
record ItemFound(
        Optional<Integer> which,
        VerdictKind standing,
        Optional<Length> value,
        int places,
        List<Length> ends,
        Optional<Length> sure,
        Optional<Length> bonus,
        List<Measured> readings) {

    ItemFound {
        ends = List.copyOf(ends);
        readings = List.copyOf(readings);
    }

    /** Nothing but how it stands. */
    static ItemFound standing(VerdictKind standing) {
        return new ItemFound(
                Optional.empty(),
                standing,
                Optional.empty(),
                0,
                List.of(),
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    /** While something is still to come, no figure of it stands. */
    boolean isKnown() {
        return standing != VerdictKind.OPEN;
    }
}
