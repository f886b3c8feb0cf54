package org.tenthwise.app.sums.fit;

import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.model.compute.zone.StandardTolerance;
import org.tenthwise.model.compute.zone.ToleranceZone;
import org.tenthwise.model.compute.zone.ZoneLimits;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** What a sum about ISO zones is given: a diameter in millimetres and zones by name. */
final class ZoneInputs {

    static final String DIAMETER = "diameter";

    private ZoneInputs() {}

    /** @throws CannotAnswer if the tables of the standard do not reach it */
    static Length diameter(SumInput given) {
        if (given.unit().filter(unit -> unit == Unit.INCH).isPresent()) {
            throw new CannotAnswer(
                    "unit", "unit is in: ISO 286 zones stand behind a size in millimetres, so give diameter in mm");
        }
        Length diameter = Length.of(given.positive(DIAMETER), Unit.MILLIMETRE);
        given.about(DIAMETER, () -> StandardTolerance.stepUpTo(diameter));
        return diameter;
    }

    static ZoneLimits at(SumInput given, String key, Length diameter) {
        return given.about(key, () -> ToleranceZone.read(given.text(key)).of(diameter));
    }

    /** A zone that must be of a hole, or must be of a shaft. */
    static ZoneLimits at(SumInput given, String key, Length diameter, boolean hole) {
        ZoneLimits limits = at(given, key, diameter);
        if (ToleranceZone.read(given.text(key)).isHole() != hole) {
            throw new CannotAnswer(
                    key,
                    "%s is \"%s\": a zone of a %s is written with %s letters"
                            .formatted(key, given.text(key), hole ? "hole" : "shaft", hole ? "capital" : "small"));
        }
        return limits;
    }
}
