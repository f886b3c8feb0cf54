package org.tenthwise.app.sums.gauge;

import java.math.BigDecimal;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.comparison.LeverIndicator;
import org.tenthwise.model.quantity.Length;

/** The reading of a lever indicator that stands at an angle. */
public final class LeverSum implements Sum {

    public static final Input<Length> READING = Input.length("reading");
    public static final Input<BigDecimal> ANGLE = Input.figure("angle").in(Quantity.ANGLE);
    public static final Output<Length> TRUE_READING = Output.length("true_reading");
    private static final SumDescription DESCRIPTION =
            SumDescription.named("lever").takes(READING, ANGLE).gives(TRUE_READING);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        BigDecimal angle = given.get(ANGLE);
        SumResult.Writing answer =
                DESCRIPTION.in(given.inUnit()).put(TRUE_READING, LeverIndicator.trueReading(given.get(READING), angle));
        if (LeverIndicator.isSteep(angle)) {
            answer.note("steep");
        }
        if (LeverIndicator.hardlyMatters(angle)) {
            answer.note("flat");
        }
        return answer.note("tip").done();
    }
}
