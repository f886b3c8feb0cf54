package org.tenthwise.app.sums.taper;

import java.math.BigDecimal;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.taper.TailstockOffset;
import org.tenthwise.model.quantity.Length;

/** How far the tailstock is set over for a taper. */
public final class TailstockSum implements Sum {

    public static final String NAME = "tailstock";
    public static final Input<BigDecimal> PER_FOOT = Input.positive("per_foot");
    public static final Input<BigDecimal> PER_UNIT = Input.positive("per_unit");
    public static final Input<Length> WORK_LENGTH = Input.positiveLength("work_length");
    public static final Output<Length> OFFSET = Output.length("offset");
    private static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takesOneOf(PER_FOOT, PER_UNIT)
            .takes(WORK_LENGTH)
            .gives(OFFSET);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        given.oneOf(PER_FOOT, PER_UNIT);
        Length work = given.get(WORK_LENGTH);
        Length offset = given.has(PER_FOOT)
                ? TailstockOffset.forPerFoot(given.get(PER_FOOT), work)
                : TailstockOffset.forPerUnit(given.get(PER_UNIT), work);
        return DESCRIPTION
                .in(given.inUnit())
                .put(OFFSET, offset)
                .note("whole-length")
                .note("centres")
                .done();
    }
}
