package org.tenthwise.app.sums.cutting;

import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.cutting.HalfWay;
import org.tenthwise.model.compute.cutting.NextCut;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;

/** The first of two like cuts to size. */
public final class HalfWaySum implements Sum {

    public static final Input<Length> MEASURED = Input.length("measured");
    public static final Input<Length> AIM = Input.length("aim");
    public static final Output<Length> OFFSET_CHANGE =
            Output.length("offset_change").withSign();
    public static final Output<Length> EXPECTED_SIZE = Output.length("expected_size");
    private static final SumDescription DESCRIPTION = SumDescription.named("half-way")
            .takes(CutInputs.SIDE, MEASURED, AIM, CutInputs.REGISTER)
            .gives(OFFSET_CHANGE, EXPECTED_SIZE);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Feature side = given.get(CutInputs.SIDE);
        Length measured = given.get(MEASURED);
        Length aim = given.get(AIM);
        if (NextCut.of(side, measured, aim).stockLeft().signum() == 0) {
            throw new CannotAnswer(MEASURED, "done", given.text(MEASURED), given.text(AIM));
        }
        HalfWay half = HalfWay.of(side, measured, aim);
        return DESCRIPTION
                .in(given.inUnit())
                .put(OFFSET_CHANGE, given.get(CutInputs.REGISTER).counts(half.changeOnDiameter()))
                .put(EXPECTED_SIZE, half.expectedSize())
                .note("measure")
                .done();
    }
}
