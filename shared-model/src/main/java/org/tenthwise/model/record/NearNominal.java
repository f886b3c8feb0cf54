package org.tenthwise.model.record;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.Limits;

/**
 * How far a size, an angle or a reading may lie from what the drawing asks for before it is far off. Common practice,
 * see {@link Plausible}.
 */
final class NearNominal {

    private static final BigDecimal QUARTER = new BigDecimal("0.25");
    private static final Length ONE_MILLIMETRE = Length.of("1", Unit.MILLIMETRE);
    private static final Length ONE_DEGREE = Length.of("1", Unit.DEGREE);
    private static final Length QUARTER_TURN = Length.of("90", Unit.DEGREE);
    private static final Length HALF_TURN = Length.of("180", Unit.DEGREE);
    /** A band of half the tolerance about the mistaken angle ends a tolerance from the nominal. */
    private static final BigDecimal TOLERANCES_APART = new BigDecimal("1.5");

    private NearNominal() {}

    /** A rod on the point of a drilled hole reads deeper than the size by the length of the point. */
    static Expected size(SizeCheck size) {
        Expected near = size(size.limits());
        return size.contact() instanceof Contact.DrilledHole hole
                ? new Expected(near.about().plus(Touch.most(hole)), near.room())
                : near;
    }

    /** Where the angle of the other side lies within a tolerance of the limits, nobody can tell the two apart. */
    static Expected angle(Limits limits) {
        Expected near = size(limits);
        List<Expected> mistaken = limits.width().stream()
                .flatMap(width -> Stream.of(QUARTER_TURN, HALF_TURN)
                        .map(turn -> turn.minus(near.about()))
                        .filter(other -> other.minus(near.about()).abs().isAbove(width.times(TOLERANCES_APART)))
                        .map(other -> new Expected(other, width.half())))
                .toList();
        return new Expected(near.about(), near.room(), mistaken);
    }

    /** A quarter of the nominal away, half of a small one, but never less than a tolerance from the limits. */
    static Expected size(Limits limits) {
        Length nominal = limits.middle();
        Length quarter = nominal.abs().times(QUARTER);
        Length little = limits.unit().isOfAngle() ? ONE_DEGREE : ONE_MILLIMETRE;
        Length small = limits.width()
                .map(width -> Length.least(List.of(little, nominal.abs().half())))
                .orElse(little);
        return new Expected(
                nominal, Length.greatest(List.of(quarter, small, limits.width().orElse(nominal.zero()))));
    }

    /** A reading that what is asked for is worked out of: no limits stand beside it. */
    static Expected reading(Length reading) {
        Length size = reading.abs();
        return new Expected(
                reading,
                Length.greatest(List.of(size.times(QUARTER), Length.least(List.of(ONE_MILLIMETRE, size.half())))));
    }
}
