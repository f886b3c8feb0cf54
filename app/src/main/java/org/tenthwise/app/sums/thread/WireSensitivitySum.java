package org.tenthwise.app.sums.thread;

import java.math.BigDecimal;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.thread.WireSensitivity;
import org.tenthwise.model.quantity.Length;

/** How uncertain a pitch diameter over wires is, and what has the most part in it. */
public final class WireSensitivitySum implements Sum {

    public static final Input<Length> U_OVER_WIRES = Input.lengthNotNegative("u_over_wires");
    public static final Input<Length> U_WIRE = Input.lengthNotNegative("u_wire");
    public static final Input<Length> U_PITCH = Input.lengthNotNegative("u_pitch");
    public static final Output<Double> BY_WIRE = Output.figure("by_wire");
    public static final Output<Double> BY_PITCH = Output.figure("by_pitch");
    public static final Output<Length> BY_HALF_ANGLE = Output.length("by_half_angle");
    public static final Output<Length> STANDARD = Output.length("standard");
    public static final Output<Length> EXPANDED = Output.length("expanded");
    private static final SumDescription DESCRIPTION = SumDescription.named("wire-sensitivity")
            .takesOneOf(DesignationInputs.FORM, ThreadInputs.HALF_ANGLE)
            .takesOneOf(DesignationInputs.PITCH, DesignationInputs.TPI)
            .takes(WireInputs.WIRE, U_OVER_WIRES, U_WIRE, U_PITCH)
            .gives(BY_WIRE, BY_PITCH, BY_HALF_ANGLE, STANDARD, EXPANDED);

    private static final BigDecimal COVERAGE = BigDecimal.valueOf(2);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        WireSensitivity sensitivity = new WireSensitivity(ThreadInputs.groove(given), given.get(WireInputs.WIRE));
        Length standard = sensitivity.standard(given.get(U_OVER_WIRES), given.get(U_WIRE), given.get(U_PITCH));
        return DESCRIPTION
                .in(given.inUnit())
                .put(BY_WIRE, sensitivity.byWire())
                .put(BY_PITCH, sensitivity.byPitch())
                .put(BY_HALF_ANGLE, sensitivity.byHalfAngle())
                .put(STANDARD, standard)
                .put(EXPANDED, standard.times(COVERAGE))
                .note("meaning")
                .done();
    }
}
