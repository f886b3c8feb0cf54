package org.tenthwise.app.sums.taper;

import java.math.BigDecimal;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.taper.SineBar;
import org.tenthwise.model.quantity.Length;

/** The stack under a sine bar for an angle, or the angle of a stack. */
public final class SineBarSum implements Sum {

    public static final String NAME = "sine-bar";
    public static final Input<Length> LENGTH = Input.positiveLength("length");
    public static final Input<BigDecimal> ANGLE = Input.figure("angle").in(Quantity.ANGLE);
    public static final Input<Length> STACK = Input.length("stack");
    public static final Input<Length> STACK_ERROR = Input.length("stack_error").optional();
    public static final Output<Length> STACK_FOUND = Output.length("stack");
    public static final Output<Double> ANGLE_FOUND = Output.figure("angle").in(Quantity.ANGLE);
    public static final Output<Double> ANGLE_ERROR =
            Output.figure("angle_error").in(Quantity.ANGLE).withSign().sometimes();
    private static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takes(LENGTH)
            .takesOneOf(ANGLE, STACK)
            .takes(STACK_ERROR)
            .gives(STACK_FOUND, ANGLE_FOUND, ANGLE_ERROR);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    private static boolean byAngle(SumInput given) {
        return given.oneOf(ANGLE, STACK).equals(ANGLE);
    }

    @Override
    public SumResult of(SumInput given) {
        SineBar bar = new SineBar(given.get(LENGTH));
        boolean byAngle = SineBarSum.byAngle(given);
        Length stack = byAngle ? given.about(ANGLE, () -> bar.stack(given.get(ANGLE))) : given.get(STACK);
        double angle = byAngle ? given.get(ANGLE).doubleValue() : given.about(STACK, () -> bar.angle(stack));
        SumResult.Writing answer =
                DESCRIPTION.in(given.inUnit()).put(STACK_FOUND, stack).put(ANGLE_FOUND, angle);
        given.find(STACK_ERROR)
                .ifPresent(
                        error -> answer.put(ANGLE_ERROR, given.about(STACK_ERROR, () -> bar.angleError(angle, error))));
        if (angle > SineBar.STEEP) {
            answer.note("steep");
        }
        return answer.note("swept").done();
    }
}
