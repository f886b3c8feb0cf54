package org.tenthwise.app.sums.gauge;

import java.math.BigDecimal;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.comparison.Rocking;
import org.tenthwise.model.quantity.Length;

/** A bore gauge tilted along the bore. */
public final class RockingSum implements Sum {

    public static final Input<Length> DIAMETER = Input.positiveLength("diameter");
    public static final Input<BigDecimal> TILT = Input.figure("tilt").in(Quantity.ANGLE);
    public static final Output<Length> READS_MORE = Output.length("reads_more");
    private static final SumDescription DESCRIPTION =
            SumDescription.named("rocking").takes(DIAMETER, TILT).gives(READS_MORE);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        return DESCRIPTION
                .in(given.inUnit())
                .put(READS_MORE, Rocking.readsMore(given.get(DIAMETER), given.get(TILT)))
                .note("rock")
                .done();
    }
}
