package org.tenthwise.app.sums.gear;

import java.math.BigDecimal;
import java.util.function.Function;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.model.compute.gear.InvoluteTeeth;
import org.tenthwise.model.quantity.Length;

/** Involute teeth as the sums are given them. */
public final class ToothInputs {

    private static final int FEWEST = 3;
    private static final int MOST = 10_000;
    private static final BigDecimal RIGHT_ANGLE = BigDecimal.valueOf(90);

    public static final Input<Integer> TEETH = Input.whole("teeth", FEWEST, MOST);
    public static final Input<Length> MODULE = Input.positiveLength("module");
    public static final Input<BigDecimal> DIAMETRAL_PITCH =
            Input.positive("diametral_pitch").in(Quantity.PER_INCH);
    public static final Input<BigDecimal> PRESSURE_ANGLE =
            Input.positive("pressure_angle").in(Quantity.ANGLE);
    public static final Input<BigDecimal> HELIX =
            Input.notNegative("helix").in(Quantity.ANGLE).usually("0");
    public static final Input<BigDecimal> SHIFT = Input.figure("shift").usually("0");

    private ToothInputs() {}

    /** Begins a sum about teeth. */
    static SumDescription named(String name) {
        return SumDescription.named(name)
                .takes(TEETH)
                .takesOneOf(MODULE, DIAMETRAL_PITCH)
                .takes(PRESSURE_ANGLE, HELIX, SHIFT);
    }

    static InvoluteTeeth of(SumInput given) {
        int teeth = given.get(TEETH);
        return new InvoluteTeeth(
                teeth,
                module(given),
                acute(given, PRESSURE_ANGLE),
                given.has(HELIX) ? acute(given, HELIX) : BigDecimal.ZERO);
    }

    /** Of the shift, or of none. */
    static Length thickness(SumInput given, InvoluteTeeth teeth) {
        return ofShift(given, teeth::thickness);
    }

    /** What comes of the shift, or of none; what is refused is refused of it. */
    static <T> T ofShift(SumInput given, Function<BigDecimal, T> work) {
        return given.has(SHIFT) ? given.about(SHIFT, () -> work.apply(given.get(SHIFT))) : work.apply(BigDecimal.ZERO);
    }

    private static Length module(SumInput given) {
        if (given.has(MODULE) == given.has(DIAMETRAL_PITCH)) {
            throw given.has(MODULE)
                    ? new CannotAnswer(MODULE, "both", given.text(MODULE), given.text(DIAMETRAL_PITCH))
                    : new CannotAnswer(MODULE, "neither");
        }
        return given.has(MODULE) ? given.get(MODULE) : InvoluteTeeth.moduleOf(given.get(DIAMETRAL_PITCH));
    }

    private static BigDecimal acute(SumInput given, Input<BigDecimal> input) {
        BigDecimal angle = given.get(input);
        if (angle.compareTo(RIGHT_ANGLE) >= 0) {
            throw new CannotAnswer(input, "not-acute", given.text(input));
        }
        return angle;
    }
}
