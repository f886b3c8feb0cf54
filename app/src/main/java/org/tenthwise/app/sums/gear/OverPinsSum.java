package org.tenthwise.app.sums.gear;

import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.gear.InvoluteTeeth;
import org.tenthwise.model.compute.gear.OverPins;
import org.tenthwise.model.compute.gear.ToothSide;
import org.tenthwise.model.quantity.Length;

/** Over or between two pins in involute teeth, from the tooth thickness, and the thickness from that. */
public final class OverPinsSum implements Sum {

    public static final String NAME = "over-pins";

    public static final Input<Length> PIN = Input.positiveLength("pin");
    public static final Input<ToothSide> SIDE = Input.choice("side", ToothSide.values());
    public static final Input<Length> THICKNESS =
            Input.positiveLength("thickness").optional();
    public static final Input<Length> MEASURED =
            Input.positiveLength("measured").optional();
    public static final Output<Length> OVER_PINS = Output.length("over_pins");
    public static final Output<Length> CONTACT_DIAMETER = Output.length("contact_diameter");
    public static final Output<Double> CHANGE_FACTOR = Output.figure("change_factor");
    public static final Output<Length> THICKNESS_FOUND =
            Output.length("thickness").sometimes();
    private static final SumDescription DESCRIPTION = ToothInputs.named(NAME)
            .takes(THICKNESS, PIN, SIDE, MEASURED)
            .gives(OVER_PINS, CONTACT_DIAMETER, CHANGE_FACTOR, THICKNESS_FOUND);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        InvoluteTeeth teeth = ToothInputs.of(given);
        if (given.has(ToothInputs.SHIFT) && given.has(THICKNESS)) {
            throw new CannotAnswer(THICKNESS, "both", given.text(THICKNESS), given.text(ToothInputs.SHIFT));
        }
        OverPins pins = new OverPins(teeth, given.get(PIN), given.get(SIDE));
        Length thickness = given.find(THICKNESS).orElseGet(() -> ToothInputs.thickness(given, teeth));
        OverPins.Rest rest = given.about(given.has(THICKNESS) ? THICKNESS : PIN, () -> pins.rest(thickness));
        SumResult.Writing answer = DESCRIPTION
                .in(given.inUnit())
                .put(OVER_PINS, rest.measured())
                .put(CONTACT_DIAMETER, rest.contactDiameter())
                .put(CHANGE_FACTOR, rest.changeFactor());
        given.find(MEASURED)
                .ifPresent(
                        measured -> answer.put(THICKNESS_FOUND, given.about(MEASURED, () -> pins.thickness(measured))));
        notes(answer, given, pins);
        return answer.done();
    }

    private static void notes(SumResult.Writing answer, SumInput given, OverPins pins) {
        answer.note("contact");
        if (pins.side() == ToothSide.INTERNAL && given.has(ToothInputs.SHIFT)) {
            answer.note("internal-shift");
        }
        if (!pins.teeth().isSpur() && pins.teeth().teeth() % 2 != 0) {
            answer.note("odd-helical");
        }
        answer.note("effective");
    }
}
