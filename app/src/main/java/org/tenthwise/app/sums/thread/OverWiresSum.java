package org.tenthwise.app.sums.thread;

import java.util.Optional;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.thread.MeasurementOverWires;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.thread.ScrewThread;

/** Pitch diameter from a measurement over wires, or the measurement from the pitch diameter. */
public final class OverWiresSum implements Sum {

    public static final String NAME = "over-wires";
    private static final int THREE = 3;

    public static final Input<Length> OVER_WIRES = Input.positiveLength("over_wires");
    public static final Input<Length> PITCH_DIAMETER = Input.positiveLength("pitch_diameter");
    public static final Input<Integer> WIRES = Input.whole("wires", 2, THREE).usually("3");
    public static final Output<Length> PITCH_DIAMETER_FOUND = Output.length("pitch_diameter");
    public static final Output<Length> OVER_WIRES_FOUND = Output.length("over_wires");
    public static final Output<Length> SIMPLE = Output.length("simple");
    public static final Output<Length> CORRECTED = Output.length("corrected");
    private static final SumDescription DESCRIPTION = WireInputs.givingAlike(WireInputs.named(NAME)
            .takesOneOf(OVER_WIRES, PITCH_DIAMETER)
            .takes(WireInputs.MINOR_DIAMETER, WIRES)
            .gives(PITCH_DIAMETER_FOUND, OVER_WIRES_FOUND, SIMPLE, CORRECTED));

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
        Optional<Length> wantedOver = given.find(PITCH_DIAMETER);
        if (wantedOver.isPresent() == given.has(OVER_WIRES)) {
            throw wantedOver.isPresent()
                    ? new CannotAnswer(OVER_WIRES, "both", given.text(OVER_WIRES), given.text(PITCH_DIAMETER))
                    : new CannotAnswer(OVER_WIRES, "neither");
        }
        Optional<Length> diameter = given.find(WireInputs.DIAMETER);
        if (diameter.isEmpty() && wantedOver.isEmpty()) {
            throw new CannotAnswer(WireInputs.DIAMETER, "missing");
        }
        Length ofTheLead = diameter.map(crest -> basicPitchDiameter(given, thread, crest))
                .or(() -> wantedOver)
                .orElseThrow();
        MeasurementOverWires sum = new MeasurementOverWires(thread.groove(), wire, ofTheLead);
        Length pitchDiameter = wantedOver.orElseGet(
                () -> given.about(OVER_WIRES, "no-room", () -> sum.pitchDiameter(given.get(OVER_WIRES))));
        Length over = wantedOver
                .map(wanted -> given.about(PITCH_DIAMETER, "no-rest", () -> sum.overWires(wanted)))
                .orElseGet(() -> given.get(OVER_WIRES));

        answer.put(PITCH_DIAMETER_FOUND, pitchDiameter)
                .put(OVER_WIRES_FOUND, over)
                .put(SIMPLE, wantedOver.map(sum::simpleOverWires).orElseGet(() -> sum.simplePitchDiameter(over)))
                .put(
                        CORRECTED,
                        wantedOver.map(sum::correctedOverWires).orElseGet(() -> sum.correctedPitchDiameter(over)));
        writing.write(sum, pitchDiameter, over, diameter, ofTheLead);
        if (given.has(WIRES) && given.get(WIRES) < THREE) {
            answer.note("two");
        }
        return answer.done();
    }

    private static Length basicPitchDiameter(SumInput given, ThreadInputs thread, Length diameter) {
        return DesignationInputs.withCore(given, () -> new ScrewThread(
                        thread.form(),
                        diameter,
                        thread.groove().pitch(),
                        thread.groove().starts())
                .basicPitchDiameter());
    }
}
