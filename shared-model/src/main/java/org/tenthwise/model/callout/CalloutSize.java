package org.tenthwise.model.callout;

import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.model.compute.zone.ToleranceZone;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.Origin;

/**
 * A size as it is drawn, with what stands behind it.
 *
 * @param lower absent where none is written
 * @param upper absent where none is written
 * @param isFraction drawn as a fraction of an inch
 * @param origin what the limits were worked out from
 * @param zone the tolerance class behind it
 */
record CalloutSize(
        Optional<BigDecimal> nominal,
        Optional<BigDecimal> lower,
        Optional<BigDecimal> upper,
        Unit unit,
        boolean isFraction,
        Optional<Origin> origin,
        Optional<ToleranceZone> zone) {

    /** A size without a tolerance class. */
    CalloutSize(
            Optional<BigDecimal> nominal,
            Optional<BigDecimal> lower,
            Optional<BigDecimal> upper,
            Unit unit,
            boolean isFraction,
            Optional<Origin> origin) {
        this(nominal, lower, upper, unit, isFraction, origin, Optional.empty());
    }

    static CalloutSize between(Optional<BigDecimal> nominal, BigDecimal lower, BigDecimal upper, Unit unit) {
        return new CalloutSize(nominal, Optional.of(lower), Optional.of(upper), unit, false, Optional.empty());
    }

    static CalloutSize atMost(BigDecimal upper, Unit unit) {
        return new CalloutSize(Optional.empty(), Optional.empty(), Optional.of(upper), unit, false, Optional.empty());
    }

    static CalloutSize atLeast(BigDecimal lower, Unit unit) {
        return new CalloutSize(Optional.empty(), Optional.of(lower), Optional.empty(), unit, false, Optional.empty());
    }

    static CalloutSize plain(BigDecimal nominal, Unit unit, boolean isFraction) {
        return new CalloutSize(
                Optional.of(nominal), Optional.empty(), Optional.empty(), unit, isFraction, Optional.empty());
    }

    boolean hasLimits() {
        return lower.isPresent() || upper.isPresent();
    }

    /** Whether it is written as a most or a least alone. */
    boolean hasOneLimit() {
        return lower.isPresent() != upper.isPresent();
    }

    boolean isOfAngle() {
        return unit.isOfAngle();
    }
}
