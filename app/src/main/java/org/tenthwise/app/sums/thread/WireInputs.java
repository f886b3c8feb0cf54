package org.tenthwise.app.sums.thread;

import java.math.BigDecimal;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.model.quantity.Length;

/** What the sums over wires are given and give alike. */
public final class WireInputs {

    public static final Input<Length> DIAMETER =
            Input.positiveLength("diameter").optional();
    public static final Input<Length> WIRE = Input.positiveLength("wire");
    public static final Input<Length> MINOR_DIAMETER =
            Input.positiveLength("minor_diameter").optional();
    public static final Output<BigDecimal> LEAD_ANGLE =
            Output.exact("lead_angle").in(Quantity.ANGLE);
    public static final Output<Length> BEST_WIRE = Output.length("best_wire");
    public static final Output<Length> WIRE_LEAST = Output.length("wire_least");
    public static final Output<Length> WIRE_GREATEST = Output.length("wire_greatest");
    public static final Output<Length> ROOT_CLEARANCE =
            Output.length("root_clearance").sometimes();

    private WireInputs() {}

    /** Begins a sum that takes a thread by its form, pitch or threads per inch and a wire. */
    static SumDescription named(String name) {
        return SumDescription.named(name)
                .takes(DesignationInputs.FORM, DIAMETER)
                .takesOneOf(DesignationInputs.PITCH, DesignationInputs.TPI)
                .takes(DesignationInputs.STARTS, ThreadInputs.HALF_ANGLE, ThreadInputs.GROOVE_WIDTH, WIRE);
    }

    /** The same sum, giving the lead angle, the wires that would do and the room at the root as well. */
    static SumDescription givingAlike(SumDescription sum) {
        return sum.gives(LEAD_ANGLE, BEST_WIRE, WIRE_LEAST, WIRE_GREATEST, ROOT_CLEARANCE);
    }
}
