package org.tenthwise.app.sums.cutting;

import java.util.Set;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.cutting.HalfWay;
import org.tenthwise.model.compute.cutting.NextCut;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;

/** The first of two like cuts to size. */
final class HalfWaySum implements Sum {

    @Override
    public String name() {
        return "half-way";
    }

    @Override
    public Set<String> keys() {
        return Set.of("side", "measured", "aim", "register");
    }

    @Override
    public SumResult of(SumInput given) {
        Feature side = CutInputs.side(given);
        Length measured = given.length("measured");
        Length aim = given.length("aim");
        if (NextCut.of(side, measured, aim).stockLeft().signum() == 0) {
            throw new CannotAnswer(
                    "measured",
                    "measured is %s: nothing is left to come off before the aim, %s"
                            .formatted(given.text("measured"), given.text("aim")));
        }
        HalfWay half = HalfWay.of(side, measured, aim);
        return SumResult.in(given.inUnit())
                .length("offset_change", CutInputs.register(given).counts(half.changeOnDiameter()))
                .length("expected_size", half.expectedSize())
                .note("Measure after this cut: what differs from expected_size will differ again by as much in "
                        + "the second, like cut.")
                .on("Half of what is left, then the rest: common practice");
    }
}
