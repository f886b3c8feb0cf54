package org.tenthwise.app.sums.fit;

import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.zone.ToleranceZone;
import org.tenthwise.model.compute.zone.ZoneLimits;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** Deviations and limits of a size with a zone behind it. */
public final class LimitsSum implements Sum {

    public static final String NAME = "limits";
    public static final Input<String> ZONE = Input.name("zone").bounded("bound");
    public static final Output<Length> UPPER_DEVIATION =
            Output.length("upper_deviation").withSign();
    public static final Output<Length> LOWER_DEVIATION =
            Output.length("lower_deviation").withSign();
    public static final Output<Length> GREATEST = Output.length("greatest");
    public static final Output<Length> LEAST = Output.length("least");
    private static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takes(ZoneInputs.DIAMETER, ZONE)
            .gives(UPPER_DEVIATION, LOWER_DEVIATION, GREATEST, LEAST);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Length diameter = ZoneInputs.diameter(given);
        ZoneLimits zone = ZoneInputs.at(given, ZONE, diameter);
        SumResult.Writing answer = DESCRIPTION
                .in(Unit.MILLIMETRE)
                .put(UPPER_DEVIATION, zone.upper())
                .put(LOWER_DEVIATION, zone.lower())
                .put(GREATEST, zone.greatest())
                .put(LEAST, zone.least());
        if (ToleranceZone.read(given.text(ZONE)).mayBeRoundedDown(diameter)) {
            answer.note("rounded-down");
        }
        return answer.done();
    }
}
