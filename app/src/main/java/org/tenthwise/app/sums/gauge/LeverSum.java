package org.tenthwise.app.sums.gauge;

import java.math.BigDecimal;
import java.util.Set;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.comparison.LeverIndicator;

/** The reading of a lever indicator that stands at an angle. */
final class LeverSum implements Sum {

    @Override
    public String name() {
        return "lever";
    }

    @Override
    public Set<String> keys() {
        return Set.of("reading", "angle");
    }

    @Override
    public SumResult of(SumInput given) {
        BigDecimal angle = given.figure("angle");
        SumResult.Writing answer = SumResult.in(given.inUnit())
                .length("true_reading", LeverIndicator.trueReading(given.length("reading"), angle));
        if (LeverIndicator.isSteep(angle)) {
            answer.note("Above 30 degrees an error in the angle weighs more than the correction helps: set the lever "
                    + "flatter.");
        }
        if (LeverIndicator.hardlyMatters(angle)) {
            answer.note("Below 10 degrees the correction hardly matters: less than 1.6 % of the reading.");
        }
        return answer.note("For a ball tip and a lever scaled for 0 degrees; a pear-shaped tip corrects itself.")
                .on("geometry of a lever with a ball tip, exact cosine");
    }
}
