package org.tenthwise.app.sums.thread;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.thread.MeasurementOverWires;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.thread.ScrewThread;

/** Pitch diameter from a measurement over wires, or the measurement from the pitch diameter. */
final class OverWiresSum implements Sum {

    private static final int THREE = 3;

    @Override
    public String name() {
        return "over-wires";
    }

    @Override
    public Set<String> keys() {
        Set<String> keys = new TreeSet<>(ThreadInputs.KEYS);
        keys.addAll(Set.of("diameter", "wire", "wires", "over_wires", "pitch_diameter", "minor_diameter"));
        return keys;
    }

    @Override
    public SumResult of(SumInput given) {
        ThreadInputs thread = ThreadInputs.of(given);
        Length wire = given.positiveLength("wire");
        WiresWriting writing = new WiresWriting(given, thread, wire);
        Optional<Length> wantedOver = given.ifGiven("pitch_diameter", given::positiveLength);
        if (wantedOver.isPresent() == given.has("over_wires")) {
            throw new CannotAnswer(
                    "over_wires",
                    wantedOver.isPresent()
                            ? "over_wires is %s and pitch_diameter is %s: give the one that is known"
                                    .formatted(given.text("over_wires"), given.text("pitch_diameter"))
                            : "over_wires is missing: give it, or pitch_diameter");
        }
        Optional<Length> diameter = given.ifGiven("diameter", given::positiveLength);
        if (diameter.isEmpty() && wantedOver.isEmpty()) {
            throw new CannotAnswer("diameter", "diameter is missing: it is needed beside over_wires");
        }
        Length ofTheLead = diameter.map(crest -> basicPitchDiameter(given, thread, crest))
                .or(() -> wantedOver)
                .orElseThrow();
        MeasurementOverWires sum = new MeasurementOverWires(thread.groove(), wire, ofTheLead);
        Length pitchDiameter = wantedOver.orElseGet(() -> given.about(
                "over_wires",
                "with that wire it leaves no room for a thread",
                () -> sum.pitchDiameter(given.positiveLength("over_wires"))));
        Length over = wantedOver
                .map(wanted -> given.about(
                        "pitch_diameter", "the wire finds no rest in such a thread", () -> sum.overWires(wanted)))
                .orElseGet(() -> given.positiveLength("over_wires"));

        SumResult.Writing answer = writing.answer()
                .length("pitch_diameter", pitchDiameter)
                .length("over_wires", over)
                .length("simple", wantedOver.map(sum::simpleOverWires).orElseGet(() -> sum.simplePitchDiameter(over)))
                .length(
                        "corrected",
                        wantedOver.map(sum::correctedOverWires).orElseGet(() -> sum.correctedPitchDiameter(over)));
        writing.write(sum, pitchDiameter, over, diameter, ofTheLead);
        if (given.has("wires") && given.whole("wires", 2, THREE) < THREE) {
            answer.note("Two wires stand half a pitch apart along the axis: the anvils must be kept square to the axis "
                    + "and one of them free to float along it.");
        }
        return answer.on(WiresWriting.BASIS);
    }

    private static Length basicPitchDiameter(SumInput given, ThreadInputs thread, Length diameter) {
        return given.about("diameter", DesignationInputs.noCore(given), () -> new ScrewThread(
                        thread.form(),
                        diameter,
                        thread.groove().pitch(),
                        thread.groove().starts())
                .basicPitchDiameter());
    }
}
