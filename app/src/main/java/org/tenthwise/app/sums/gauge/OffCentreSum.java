package org.tenthwise.app.sums.gauge;

import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.comparison.OffCentre;
import org.tenthwise.model.quantity.Length;

/** A bore gauge whose points stand on a chord. */
public final class OffCentreSum implements Sum {

    public static final Input<Length> DIAMETER = Input.positiveLength("diameter");
    public static final Input<Length> OFF_CENTRE = Input.length("off_centre");
    public static final Output<Length> READS_LESS = Output.length("reads_less");
    private static final SumDescription DESCRIPTION =
            SumDescription.named("off-centre").takes(DIAMETER, OFF_CENTRE).gives(READS_LESS);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Length diameter = given.get(DIAMETER);
        Length offCentre = given.get(OFF_CENTRE);
        if (!OffCentre.touches(diameter, offCentre)) {
            throw new CannotAnswer(OFF_CENTRE, "too-far", given.text(OFF_CENTRE), given.text(DIAMETER));
        }
        return DESCRIPTION
                .in(given.inUnit())
                .put(READS_LESS, OffCentre.readsLess(diameter, offCentre))
                .note("swing")
                .done();
    }
}
