package org.tenthwise.app.sums.thread;

import java.util.Optional;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.thread.Groove;
import org.tenthwise.model.compute.thread.TouchingWire;
import org.tenthwise.model.compute.thread.WireSensitivity;
import org.tenthwise.model.compute.thread.WireSizes;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.thread.ThreadForm;

/** The wires a thread takes and the constants of the handbooks' formulas for it. */
public final class WireConstantsSum implements Sum {

    public static final Input<Length> PITCH_DIAMETER =
            Input.positiveLength("pitch_diameter").optional();
    public static final Output<Length> BEST_WIRE = Output.length("best_wire");
    public static final Output<Length> WIRE_LEAST = Output.length("wire_least").sometimes();
    public static final Output<Length> WIRE_GREATEST =
            Output.length("wire_greatest").sometimes();
    public static final Output<Double> WIRE_FACTOR = Output.figure("wire_factor");
    public static final Output<Double> PITCH_FACTOR = Output.figure("pitch_factor");
    public static final Output<Length> PITCH_CONSTANT = Output.length("pitch_constant");
    public static final Output<Length> BEST_WIRE_AT_LEAD =
            Output.length("best_wire_at_lead").sometimes();
    public static final Output<Length> OVER_LESS_PITCH_DIAMETER =
            Output.length("over_less_pitch_diameter").sometimes();
    private static final SumDescription DESCRIPTION = SumDescription.named("wire-constants")
            .takesOneOf(DesignationInputs.FORM, ThreadInputs.HALF_ANGLE)
            .takesOneOf(DesignationInputs.PITCH, DesignationInputs.TPI)
            .takes(DesignationInputs.STARTS, ThreadInputs.GROOVE_WIDTH, PITCH_DIAMETER)
            .gives(
                    BEST_WIRE,
                    WIRE_LEAST,
                    WIRE_GREATEST,
                    WIRE_FACTOR,
                    PITCH_FACTOR,
                    PITCH_CONSTANT,
                    BEST_WIRE_AT_LEAD,
                    OVER_LESS_PITCH_DIAMETER);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Optional<ThreadForm> form = ThreadInputs.form(given);
        Groove groove = ThreadInputs.groove(given);
        Length best = WireSizes.best(groove);
        WireSensitivity sensitivity = new WireSensitivity(groove, best);
        SumResult.Writing answer = DESCRIPTION.in(given.inUnit()).put(BEST_WIRE, best);
        form.map(crest -> WireSizes.of(crest, groove))
                .ifPresentOrElse(
                        sizes -> answer.put(WIRE_LEAST, sizes.least()).put(WIRE_GREATEST, sizes.greatest()),
                        () -> answer.note("no-crest"));
        answer.put(WIRE_FACTOR, -sensitivity.byWire())
                .put(PITCH_FACTOR, sensitivity.byPitch())
                .put(PITCH_CONSTANT, groove.pitchConstant());
        given.find(PITCH_DIAMETER).ifPresent(pitchDiameter -> {
            TouchingWire touching = given.about(PITCH_DIAMETER, () -> TouchingWire.of(groove, pitchDiameter));
            answer.put(BEST_WIRE_AT_LEAD, touching.diameter())
                    .put(OVER_LESS_PITCH_DIAMETER, touching.overLessPitchDiameter());
        });
        return answer.done();
    }
}
