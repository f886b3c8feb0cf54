package org.tenthwise.app.sums.gear;

import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.gear.ChordalThickness;
import org.tenthwise.model.compute.gear.InvoluteTeeth;
import org.tenthwise.model.quantity.Length;

/** What a gear tooth caliper is set to and reads. */
public final class ChordalSum implements Sum {

    public static final String NAME = "chordal";
    public static final Input<Length> ADDENDUM =
            Input.positiveLength("addendum").optional();
    public static final Output<Length> THICKNESS = Output.length("thickness");
    public static final Output<Double> HALF_ANGLE = Output.figure("half_angle").in(Quantity.ANGLE);
    public static final Output<Double> VIRTUAL_TEETH = Output.figure("virtual_teeth");
    public static final Output<Length> CHORD = Output.length("chord");
    public static final Output<Length> CHORDAL_ADDENDUM =
            Output.length("chordal_addendum").sometimes();
    private static final SumDescription DESCRIPTION = ToothInputs.named(NAME)
            .takes(ADDENDUM)
            .gives(THICKNESS, HALF_ANGLE, VIRTUAL_TEETH, CHORD, CHORDAL_ADDENDUM);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        InvoluteTeeth teeth = ToothInputs.of(given);
        ChordalThickness chordal = ToothInputs.ofShift(given, shift -> ChordalThickness.of(teeth, shift));
        SumResult.Writing answer = DESCRIPTION
                .in(given.inUnit())
                .put(THICKNESS, chordal.thickness())
                .put(HALF_ANGLE, chordal.halfAngle())
                .put(VIRTUAL_TEETH, chordal.virtualTeeth())
                .put(CHORD, chordal.chord());
        given.find(ADDENDUM).ifPresent(addendum -> answer.put(CHORDAL_ADDENDUM, addendum.plus(chordal.rise()))
                .note("tip"));
        return answer.done();
    }
}
