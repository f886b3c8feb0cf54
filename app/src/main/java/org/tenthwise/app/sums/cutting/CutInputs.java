package org.tenthwise.app.sums.cutting;

import java.util.Map;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.quantity.Length;

/** What the sums about cuts are given alike: which side of the work is cut, the limits, the register. */
final class CutInputs {

    private static final String LOWER = "lower";
    private static final String UPPER = "upper";
    private static final Map<String, Feature> SIDES = Map.of("outside", Feature.DIAMETER, "inside", Feature.BORE);
    private static final Map<String, Register> REGISTERS =
            Map.of("diameter", Register.DIAMETER, "radius", Register.RADIUS);

    private CutInputs() {}

    static Feature side(SumInput given) {
        return given.choice("side", SIDES);
    }

    /** How the offset register counts. */
    static Register register(SumInput given) {
        return given.choice("register", REGISTERS);
    }

    static Length lower(SumInput given) {
        Length lower = given.length(LOWER);
        if (given.length(UPPER).isBelow(lower)) {
            throw new CannotAnswer(
                    UPPER,
                    "upper is %s: it is below lower, which is %s".formatted(given.text(UPPER), given.text(LOWER)));
        }
        return lower;
    }

    static Length upper(SumInput given) {
        return given.length(UPPER);
    }

    /** The aim typed, or half-way between the limits. */
    static Length aim(SumInput given) {
        Length middle = lower(given).plus(upper(given)).half();
        return given.lengthIfGiven("aim").orElse(middle);
    }

    /** A length of nought or more. */
    static Length notNegative(SumInput given, String key) {
        Length length = given.length(key);
        if (length.signum() < 0) {
            throw new CannotAnswer(key, "%s is %s: it must not be less than nought".formatted(key, given.text(key)));
        }
        return length;
    }
}
