package org.tenthwise.app.sums.thread;

import java.util.Optional;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.thread.MeasurementOverWires;
import org.tenthwise.model.compute.thread.OneWire;
import org.tenthwise.model.quantity.Length;

/** Pitch diameter from a measurement over one wire and the crest. */
public final class OneWireSum implements Sum {

    public static final Input<Length> OVER_ONE_WIRE = Input.positiveLength("over_one_wire");
    public static final Input<Length> MAJOR_DIAMETER = Input.positiveLength("major_diameter");
    public static final Output<Length> OVER_WIRES = Output.length("over_wires");
    public static final Output<Length> PITCH_DIAMETER = Output.length("pitch_diameter");
    private static final SumDescription DESCRIPTION = WireInputs.givingAlike(WireInputs.named("one-wire")
            .takes(OVER_ONE_WIRE, MAJOR_DIAMETER, WireInputs.MINOR_DIAMETER)
            .gives(OVER_WIRES, PITCH_DIAMETER));

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        ThreadInputs thread = ThreadInputs.of(given);
        Length wire = given.get(WireInputs.WIRE);
        SumResult.Writing answer = DESCRIPTION.in(given.inUnit());
        WiresWriting writing = new WiresWriting(given, answer, thread, wire);
        Length major = given.get(MAJOR_DIAMETER);
        Length over = OneWire.overWires(given.get(OVER_ONE_WIRE), major);
        Optional<Length> basic = given.find(WireInputs.DIAMETER);
        Length ofTheLead = basic.orElse(major)
                .minus(thread.form().majorLessPitchDiameter(thread.groove().pitch()));
        MeasurementOverWires sum = new MeasurementOverWires(thread.groove(), wire, ofTheLead);
        Length pitchDiameter = given.about(OVER_ONE_WIRE, "no-room", () -> sum.pitchDiameter(over));
        answer.put(OVER_WIRES, over).put(PITCH_DIAMETER, pitchDiameter);
        writing.write(sum, pitchDiameter, over, Optional.of(major), ofTheLead);
        answer.note("crest");
        basic.filter(major::isAbove).ifPresent(size -> answer.note("burr", WiresWriting.plain(size, given.inUnit())));
        return answer.done();
    }
}
