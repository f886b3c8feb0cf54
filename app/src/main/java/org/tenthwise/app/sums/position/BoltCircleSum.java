package org.tenthwise.app.sums.position;

import java.math.BigDecimal;
import java.util.List;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.position.BoltCircle;
import org.tenthwise.model.quantity.Length;

/** The places of holes evenly spaced on a circle. */
public final class BoltCircleSum implements Sum {

    public static final String NAME = "bolt-circle";

    private static final int MOST_HOLES = 1000;

    public static final Input<Length> DIAMETER = Input.positiveLength("diameter");
    public static final Input<Integer> HOLES = Input.whole("holes", 2, MOST_HOLES);
    public static final Input<BigDecimal> START =
            Input.figure("start").in(Quantity.ANGLE).usually("0");
    public static final Input<Length> CENTRE_X = Input.length("centre_x").usually("0");
    public static final Input<Length> CENTRE_Y = Input.length("centre_y").usually("0");
    public static final Output<List<Length>> X = Output.lengths("x");
    public static final Output<List<Length>> Y = Output.lengths("y");
    public static final Output<Length> CHORD = Output.length("chord");
    private static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takes(DIAMETER, HOLES, START, CENTRE_X, CENTRE_Y)
            .gives(X, Y, CHORD);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        BoltCircle circle = new BoltCircle(
                given.get(DIAMETER),
                given.get(HOLES),
                given.find(START).orElse(BigDecimal.ZERO),
                given.find(CENTRE_X).orElse(Length.ZERO),
                given.find(CENTRE_Y).orElse(Length.ZERO));
        return DESCRIPTION
                .in(given.inUnit())
                .put(X, circle.x())
                .put(Y, circle.y())
                .put(CHORD, circle.chord())
                .note("direction")
                .done();
    }
}
