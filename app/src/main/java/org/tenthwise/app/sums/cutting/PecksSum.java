package org.tenthwise.app.sums.cutting;

import java.math.BigDecimal;
import java.util.Set;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.drilling.Pecks;
import org.tenthwise.model.quantity.Length;

/** The depths at which a drill is drawn back to clear the chips. */
final class PecksSum implements Sum {

    private static final String SHRINK = "shrink";
    private static final String LEAST_STEP = "least_step";

    @Override
    public String name() {
        return "pecks";
    }

    @Override
    public Set<String> keys() {
        return Set.of("depth", "first", "step", SHRINK, LEAST_STEP);
    }

    @Override
    public SumResult of(SumInput given) {
        Length depth = given.positiveLength("depth");
        Length first = given.positiveLength("first");
        Length step = given.positiveLength("step");
        if (given.has(SHRINK) != given.has(LEAST_STEP)) {
            String missing = given.has(SHRINK) ? LEAST_STEP : SHRINK;
            throw new CannotAnswer(missing, "%s is missing: shrink and least_step go together".formatted(missing));
        }
        BigDecimal shrink = given.has(SHRINK) ? shrink(given) : BigDecimal.ONE;
        Length least = given.has(LEAST_STEP) ? given.positiveLength(LEAST_STEP) : step;
        Pecks pecks = given.about(
                "step",
                "it must not be less than least_step, nor so small that the hole takes a thousand pecks",
                () -> Pecks.of(depth, first, step, shrink, least));
        return SumResult.in(given.inUnit())
                .whole("count", pecks.depths().size())
                .lengths("depths", pecks.depths())
                .note("Draw the drill back far enough at each for the chips to leave and the coolant to reach the "
                        + "point; clear them with the spindle stopped, as the shop's rules say.")
                .on("Arithmetic; first peck and steps by common practice");
    }

    private static BigDecimal shrink(SumInput given) {
        BigDecimal shrink = given.positive(SHRINK);
        if (shrink.compareTo(BigDecimal.ONE) > 0) {
            throw new CannotAnswer(SHRINK, "shrink is %s: it must not be more than 1".formatted(given.text(SHRINK)));
        }
        return shrink;
    }
}
