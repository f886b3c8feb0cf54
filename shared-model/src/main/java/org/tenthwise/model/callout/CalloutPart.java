package org.tenthwise.model.callout;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.tenthwise.model.compute.roughness.AcceptanceRule;
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
 * @param unit of the figures; of a roughness micrometres on a drawing in millimetres, else microinches; of a hardness
 *     its scale; absent for words and for threads without limits
 * @param count how many alike; absent where the drawing only says that it is typical
 * @param origin what the limits were worked out from; absent if they stand in the callout
 * @param zone the tolerance class behind the size
 * @param rule by which a roughness is accepted, where the drawing says it
 * @param frame what stands in the frame of a geometrical tolerance besides its zone
 */
public record CalloutPart(
        CalloutKind kind,
        Optional<BigDecimal> nominal,
        Optional<BigDecimal> lower,
        Optional<BigDecimal> upper,
        Optional<Unit> unit,
        Optional<Integer> count,
        Optional<Origin> origin,
        Optional<ToleranceZone> zone,
        Optional<AcceptanceRule> rule,
        Optional<ToleranceFrame> frame) {

    private static final int PLACES_OF_A_DEGREE = 6;

    /** A part with figures and nothing besides. */
    CalloutPart(
            CalloutKind kind,
            Optional<BigDecimal> nominal,
            Optional<BigDecimal> lower,
            Optional<BigDecimal> upper,
            Optional<Unit> unit,
            Optional<Integer> count,
            Optional<Origin> origin) {
        this(kind, nominal, lower, upper, unit, count, origin, Optional.empty(), Optional.empty(), Optional.empty());
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

    /** A part of a size as it is drawn. */
    static CalloutPart of(CalloutKind kind, CalloutSize size) {
        return new CalloutPart(
                kind,
                size.nominal(),
                size.lower(),
                size.upper(),
                Optional.of(size.unit()),
                Optional.of(1),
                size.origin(),
                size.zone(),
                Optional.empty(),
                Optional.empty());
    }

    CalloutPart counted(Optional<Integer> other) {
        return new CalloutPart(kind, nominal, lower, upper, unit, other, origin, zone, rule, frame);
    }

    CalloutPart from(Optional<Origin> other) {
        return new CalloutPart(kind, nominal, lower, upper, unit, count, other, zone, rule, frame);
    }

    CalloutPart by(Optional<AcceptanceRule> other) {
        return new CalloutPart(kind, nominal, lower, upper, unit, count, origin, zone, other, frame);
    }

    CalloutPart with(ToleranceFrame other) {
        return new CalloutPart(kind, nominal, lower, upper, unit, count, origin, zone, rule, Optional.of(other));
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
