package org.tenthwise.model.callout;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.tenthwise.model.compute.zone.ToleranceZone;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.tolerance.Origin;

/**
 * One characteristic of a callout.
 *
 * @param nominal the size drawn; of a thread its basic pitch diameter; absent where only limits or words are drawn
 * @param lower absent where there is none
 * @param upper absent where there is none
 * @param unit of the figures; absent for roughness (micrometres on a drawing in millimetres, else microinches),
 *     hardness and words
 * @param count how many alike; absent where the drawing only says that it is typical
 * @param origin what the limits were worked out from; absent if they stand in the callout
 * @param zone the tolerance class behind the size
 */
public record CalloutPart(
        CalloutKind kind,
        Optional<BigDecimal> nominal,
        Optional<BigDecimal> lower,
        Optional<BigDecimal> upper,
        Optional<Unit> unit,
        Optional<Integer> count,
        Optional<Origin> origin,
        Optional<ToleranceZone> zone) {

    private static final int PLACES_OF_A_DEGREE = 6;

    /** A part without a tolerance class. */
    CalloutPart(
            CalloutKind kind,
            Optional<BigDecimal> nominal,
            Optional<BigDecimal> lower,
            Optional<BigDecimal> upper,
            Optional<Unit> unit,
            Optional<Integer> count,
            Optional<Origin> origin) {
        this(kind, nominal, lower, upper, unit, count, origin, Optional.empty());
    }

    /** A part with words alone. */
    static CalloutPart of(CalloutKind kind) {
        return new CalloutPart(
                kind,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(1),
                Optional.empty());
    }

    /** A part of figures without a unit of length or angle. */
    static CalloutPart of(CalloutKind kind, CalloutSize size) {
        return new CalloutPart(
                kind, size.nominal(), size.lower(), size.upper(), Optional.empty(), Optional.of(1), Optional.empty());
    }

    CalloutPart counted(Optional<Integer> other) {
        return new CalloutPart(kind, nominal, lower, upper, unit, other, origin, zone);
    }

    public boolean hasLimits() {
        return lower.isPresent() || upper.isPresent();
    }

    /** The limits of a length or an angle; absent where there are none. */
    public Optional<Limits> limits() {
        return unit.filter(of -> hasLimits())
                .map(of -> new Limits(
                        lower.map(figure -> Written.of(figure, of)),
                        upper.map(figure -> Written.of(figure, of)),
                        origin));
    }

    /** A figure of this part as a plain decimal; an angle in degrees, to six places where it has no end. */
    public String decimal(BigDecimal figure) {
        if (unit.filter(Unit::hasMarksInside).isEmpty()) {
            return figure.toPlainString();
        }
        BigDecimal degrees = Length.of(figure, unit.orElseThrow()).in(Unit.DEGREE);
        BigDecimal rounded = degrees.scale() > PLACES_OF_A_DEGREE
                ? degrees.setScale(PLACES_OF_A_DEGREE, RoundingMode.HALF_EVEN)
                : degrees;
        return rounded.toPlainString();
    }
}
