package org.tenthwise.app.sums.fit;

import java.math.BigDecimal;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.model.compute.zone.StandardTolerance;
import org.tenthwise.model.compute.zone.ToleranceZone;
import org.tenthwise.model.compute.zone.ZoneLimits;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Message;

/** What a sum about ISO zones is given: a diameter in millimetres and zones by name. */
public final class ZoneInputs {

    public static final Input<BigDecimal> DIAMETER =
            Input.positive("diameter").in(Quantity.LENGTH).bounded("in-millimetres");

    private ZoneInputs() {}

    /** @throws CannotAnswer if the tables of the standard do not reach it */
    static Length diameter(SumInput given) {
        given.refuse(Unit.INCH, "zones");
        Length diameter = Length.of(given.get(DIAMETER), Unit.MILLIMETRE);
        given.about(DIAMETER, () -> StandardTolerance.stepUpTo(diameter));
        return diameter;
    }

    static ZoneLimits at(SumInput given, Input<String> zone, Length diameter) {
        return given.about(zone, () -> ToleranceZone.read(given.get(zone)).of(diameter));
    }

    /** A zone that must be of a hole, or must be of a shaft. */
    static ZoneLimits at(SumInput given, Input<String> zone, Length diameter, boolean hole) {
        ZoneLimits limits = at(given, zone, diameter);
        if (ToleranceZone.read(given.get(zone)).isHole() != hole) {
            throw new CannotAnswer(
                    zone, Message.of(hole ? "given.zone-of-hole" : "given.zone-of-shaft", zone, given.get(zone)));
        }
        return limits;
    }
}
