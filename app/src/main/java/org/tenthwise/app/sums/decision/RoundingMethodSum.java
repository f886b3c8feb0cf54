package org.tenthwise.app.sums.decision;

import java.util.Set;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.uncertainty.RoundingMethod;
import org.tenthwise.model.quantity.Unit;

/** A figure against limits, as it stands and rounded first. */
final class RoundingMethodSum implements Sum {

    @Override
    public String name() {
        return "rounding-method";
    }

    @Override
    public Set<String> keys() {
        return Set.of("value", "lower", "upper", "place");
    }

    @Override
    public SumResult of(SumInput given) {
        RoundingMethod found = RoundingMethod.of(
                given.figure("value"),
                given.figureIfGiven("lower"),
                given.figureIfGiven("upper"),
                given.ifGiven("place", given::positive));
        SumResult.Writing answer = SumResult.in(given.unit().orElse(Unit.MILLIMETRE))
                .word("verdict_absolute", word(found.absolute()))
                .word("verdict_rounded", word(found.byRounding()))
                .exact("rounded", found.rounded());
        if (found.absolute() != found.byRounding()) {
            answer.note("The two methods do not agree: the order must say which one holds. Without a word on it, the "
                    + "absolute method counts.");
        }
        return answer.on("ASTM E29, absolute and rounding method, half to even");
    }

    private static String word(boolean conforms) {
        return conforms ? "pass" : "fail";
    }
}
