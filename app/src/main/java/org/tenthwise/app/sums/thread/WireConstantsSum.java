package org.tenthwise.app.sums.thread;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.thread.Groove;
import org.tenthwise.model.compute.thread.TouchingWire;
import org.tenthwise.model.compute.thread.WireSensitivity;
import org.tenthwise.model.compute.thread.WireSizes;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.thread.ThreadForm;

/** The wires a thread takes and the constants of the handbooks' formulas for it. */
final class WireConstantsSum implements Sum {

    @Override
    public String name() {
        return "wire-constants";
    }

    @Override
    public Set<String> keys() {
        Set<String> keys = new TreeSet<>(ThreadInputs.KEYS);
        keys.add("pitch_diameter");
        return keys;
    }

    @Override
    public SumResult of(SumInput given) {
        Optional<ThreadForm> form = ThreadInputs.form(given);
        Groove groove = ThreadInputs.groove(given);
        Length best = WireSizes.best(groove);
        WireSensitivity sensitivity = new WireSensitivity(groove, best);
        SumResult.Writing answer = SumResult.in(given.inUnit()).length("best_wire", best);
        form.map(crest -> WireSizes.of(crest, groove))
                .ifPresentOrElse(
                        sizes -> answer.length("wire_least", sizes.least()).length("wire_greatest", sizes.greatest()),
                        () -> answer.note(
                                "wire_least and wire_greatest hang on the crest, which half_angle does not tell: "
                                        + "give form as well"));
        answer.figure("wire_factor", -sensitivity.byWire())
                .figure("pitch_factor", sensitivity.byPitch())
                .length("pitch_constant", groove.pitchConstant());
        given.ifGiven("pitch_diameter", given::positiveLength).ifPresent(pitchDiameter -> {
            TouchingWire touching = given.about("pitch_diameter", () -> TouchingWire.of(groove, pitchDiameter));
            answer.length("best_wire_at_lead", touching.diameter())
                    .length("over_less_pitch_diameter", touching.overLessPitchDiameter());
        });
        return answer.on(
                "ASME B1.2 and Machinery's Handbook, 31st ed., pp. 2127 to 2136; at the lead, the exact solution "
                        + "for flanks straight in axial section");
    }
}
