package org.tenthwise.app.sums.cutting;

import java.math.BigDecimal;
import java.util.List;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.drilling.Pecks;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Message;

/** The depths at which a drill is drawn back to clear the chips. */
public final class PecksSum implements Sum {

    public static final Input<Length> DEPTH = Input.positiveLength("depth");
    public static final Input<Length> FIRST = Input.positiveLength("first");
    public static final Input<Length> STEP = Input.positiveLength("step");
    public static final Input<BigDecimal> SHRINK = Input.positive("shrink")
            .that(shrink -> shrink.compareTo(BigDecimal.ONE) <= 0)
            .optional();
    public static final Input<Length> LEAST_STEP =
            Input.positiveLength("least_step").optional();
    public static final Output<Integer> COUNT = Output.whole("count");
    public static final Output<List<Length>> DEPTHS = Output.lengths("depths");
    private static final SumDescription DESCRIPTION = SumDescription.named("pecks")
            .takes(DEPTH, FIRST, STEP, SHRINK, LEAST_STEP)
            .gives(COUNT, DEPTHS);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Length depth = given.get(DEPTH);
        Length first = given.get(FIRST);
        Length step = given.get(STEP);
        if (given.has(SHRINK) != given.has(LEAST_STEP)) {
            Input<?> missing = given.has(SHRINK) ? LEAST_STEP : SHRINK;
            throw new CannotAnswer(missing, Message.of("given.pecks-together", missing));
        }
        BigDecimal shrink = given.find(SHRINK).orElse(BigDecimal.ONE);
        Length least = given.find(LEAST_STEP).orElse(step);
        Pecks pecks = given.about(STEP, "too-small", () -> Pecks.of(depth, first, step, shrink, least));
        return DESCRIPTION
                .in(given.inUnit())
                .put(COUNT, pecks.depths().size())
                .put(DEPTHS, pecks.depths())
                .note("draw-back")
                .done();
    }
}
