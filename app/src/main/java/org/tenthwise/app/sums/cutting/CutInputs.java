package org.tenthwise.app.sums.cutting;

import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.quantity.Length;

/** What the sums about cuts are given alike: which side of the work is cut, the limits, the register. */
public final class CutInputs {

    public static final Input<Feature> SIDE = Input.choice("side", "outside", Feature.DIAMETER, "inside", Feature.BORE);
    public static final Input<Register> REGISTER = Input.choice("register", Register.values());
    public static final Input<Length> LOWER = Input.length("lower");
    public static final Input<Length> UPPER = Input.length("upper");

    private CutInputs() {}

    /** The lower limit, which is not above the upper one. */
    static Length lower(SumInput given) {
        Length lower = given.get(LOWER);
        if (given.get(UPPER).isBelow(lower)) {
            throw new CannotAnswer(UPPER, "below-lower", given.text(UPPER), given.text(LOWER));
        }
        return lower;
    }
}
