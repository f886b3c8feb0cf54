package org.tenthwise.app.sums.profile;

import java.math.BigDecimal;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.dovetail.DovetailByPins;
import org.tenthwise.model.compute.dovetail.DovetailSide;
import org.tenthwise.model.quantity.Length;

/** Over or between the pins of a dovetail from its width, or the width from that. */
public final class DovetailSum implements Sum {

    public static final String NAME = "dovetail";
    private static final BigDecimal RIGHT_ANGLE = BigDecimal.valueOf(90);

    public static final Input<BigDecimal> ANGLE = Input.positive("angle").in(Quantity.ANGLE);
    public static final Input<Length> PIN = Input.positiveLength("pin");
    public static final Input<DovetailSide> SIDE = Input.choice("side", DovetailSide.values());
    public static final Input<Length> WIDTH = Input.positiveLength("width");
    public static final Input<Length> MEASURED = Input.positiveLength("measured");
    public static final Input<Length> HEIGHT = Input.positiveLength("height").optional();
    public static final Output<Length> MEASURED_FOUND = Output.length("measured");
    public static final Output<Length> WIDTH_FOUND = Output.length("width");
    public static final Output<Length> OTHER_WIDTH =
            Output.length("other_width").sometimes();
    private static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takes(ANGLE, PIN, SIDE)
            .takesOneOf(WIDTH, MEASURED)
            .takes(HEIGHT)
            .gives(MEASURED_FOUND, WIDTH_FOUND, OTHER_WIDTH);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        BigDecimal angle = given.get(ANGLE);
        if (angle.compareTo(RIGHT_ANGLE) >= 0) {
            throw new CannotAnswer(ANGLE, "not-acute", given.text(ANGLE));
        }
        DovetailByPins dovetail = new DovetailByPins(angle, given.get(PIN), given.get(SIDE));
        if (given.has(WIDTH) == given.has(MEASURED)) {
            throw given.has(WIDTH)
                    ? new CannotAnswer(WIDTH, "both", given.text(WIDTH), given.text(MEASURED))
                    : new CannotAnswer(WIDTH, "neither");
        }
        Length width =
                given.find(WIDTH).orElseGet(() -> given.about(MEASURED, () -> dovetail.width(given.get(MEASURED))));
        Length measured = given.find(MEASURED).orElseGet(() -> given.about(WIDTH, () -> dovetail.measured(width)));
        SumResult.Writing answer =
                DESCRIPTION.in(given.inUnit()).put(MEASURED_FOUND, measured).put(WIDTH_FOUND, width);
        given.find(HEIGHT)
                .ifPresent(height ->
                        answer.put(OTHER_WIDTH, given.about(HEIGHT, () -> dovetail.otherWidth(width, height))));
        return answer.note(dovetail.side() == DovetailSide.MALE ? "male" : "female")
                .note("corners")
                .done();
    }
}
