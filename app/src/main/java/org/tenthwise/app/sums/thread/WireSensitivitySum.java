package org.tenthwise.app.sums.thread;

import java.math.BigDecimal;
import java.util.Set;
import java.util.TreeSet;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.thread.WireSensitivity;
import org.tenthwise.model.quantity.Length;

/** How uncertain a pitch diameter over wires is, and what has the most part in it. */
final class WireSensitivitySum implements Sum {

    private static final BigDecimal COVERAGE = BigDecimal.valueOf(2);

    @Override
    public String name() {
        return "wire-sensitivity";
    }

    @Override
    public Set<String> keys() {
        Set<String> keys = new TreeSet<>(Set.of("form", "half_angle", "pitch", "tpi"));
        keys.addAll(Set.of("wire", "u_over_wires", "u_wire", "u_pitch"));
        return keys;
    }

    @Override
    public SumResult of(SumInput given) {
        WireSensitivity sensitivity = new WireSensitivity(ThreadInputs.groove(given), given.positiveLength("wire"));
        Length standard = sensitivity.standard(
                uncertainty(given, "u_over_wires"), uncertainty(given, "u_wire"), uncertainty(given, "u_pitch"));
        return SumResult.in(given.inUnit())
                .figure("by_wire", sensitivity.byWire())
                .figure("by_pitch", sensitivity.byPitch())
                .length("by_half_angle", sensitivity.byHalfAngle())
                .length("standard", standard)
                .length("expanded", standard.times(COVERAGE))
                .note("by_half_angle is for one degree of error of the half angle, and nought with the best wire. "
                        + "The expanded uncertainty is twice the standard one.")
                .on("Derivatives of the three-wire formula, ASME B1.2 and Machinery's Handbook, 31st ed., p. "
                        + "2127; combined by JCGM 100:2008, 5.1.2");
    }

    private static Length uncertainty(SumInput given, String key) {
        Length uncertainty = given.length(key);
        if (uncertainty.signum() < 0) {
            throw new CannotAnswer(key, "%s is %s: it must not be less than nought".formatted(key, given.text(key)));
        }
        return uncertainty;
    }
}
