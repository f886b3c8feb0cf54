package org.tenthwise.app.sums.taper;

import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.taper.TaperByBalls;
import org.tenthwise.model.quantity.Length;

/** The angle and the mouth of an inside taper by two balls. */
public final class TaperBallsSum implements Sum {

    public static final String NAME = "taper-balls";

    public static final Input<Length> LARGE_BALL = Input.positiveLength("large_ball");
    public static final Input<Length> SMALL_BALL = Input.positiveLength("small_ball");
    public static final Input<Length> LARGE_DEPTH = Input.length("large_depth").bounded("bound");
    public static final Input<Length> SMALL_DEPTH = Input.length("small_depth").bounded("bound");
    public static final Output<Double> INCLUDED = Output.figure("included").in(Quantity.ANGLE);
    public static final Output<Length> MOUTH = Output.length("mouth");
    private static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takes(LARGE_BALL, SMALL_BALL, LARGE_DEPTH, SMALL_DEPTH)
            .gives(INCLUDED, MOUTH);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Length largeBall = given.get(LARGE_BALL);
        Length smallBall = given.get(SMALL_BALL);
        Length largeDepth = given.get(LARGE_DEPTH);
        Length smallDepth = given.get(SMALL_DEPTH);
        if (!largeBall.isAbove(smallBall)) {
            throw new CannotAnswer(LARGE_BALL, "not-larger", given.text(LARGE_BALL), given.text(SMALL_BALL));
        }
        TaperByBalls balls =
                given.about(LARGE_DEPTH, () -> new TaperByBalls(largeBall, smallBall, largeDepth, smallDepth));
        return DESCRIPTION
                .in(given.inUnit())
                .put(INCLUDED, balls.taper().included())
                .put(MOUTH, balls.mouth())
                .note("certified")
                .note("sharp")
                .done();
    }
}
