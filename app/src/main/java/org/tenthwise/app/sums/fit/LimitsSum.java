package org.tenthwise.app.sums.fit;

import java.util.Set;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.zone.ToleranceZone;
import org.tenthwise.model.compute.zone.ZoneLimits;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** Deviations and limits of a size with a zone behind it. */
final class LimitsSum implements Sum {

    private static final String ZONE = "zone";

    @Override
    public String name() {
        return "limits";
    }

    @Override
    public Set<String> keys() {
        return Set.of(ZoneInputs.DIAMETER, ZONE);
    }

    @Override
    public SumResult of(SumInput given) {
        Length diameter = ZoneInputs.diameter(given);
        ZoneLimits zone = ZoneInputs.at(given, ZONE, diameter);
        SumResult.Writing answer = SumResult.in(Unit.MILLIMETRE)
                .length("upper_deviation", zone.upper())
                .length("lower_deviation", zone.lower())
                .length("greatest", zone.greatest())
                .length("least", zone.least());
        if (ToleranceZone.read(given.text(ZONE)).mayBeRoundedDown(diameter)) {
            answer.note("ISO 286 lets js and JS of grades 7 to 11 be rounded down to whole micrometres: these are not, "
                    + "a drawing or its table may be");
        }
        return answer.on("ISO 286-1:2010, Tables 1 to 5; ISO 286-2:2010");
    }
}
