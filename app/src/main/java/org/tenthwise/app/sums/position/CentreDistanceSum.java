package org.tenthwise.app.sums.position;

import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.position.CentreDistance;
import org.tenthwise.model.quantity.Length;

/** The distance of two bores or pins, from what is read over, between or beside them. */
public final class CentreDistanceSum implements Sum {

    public static final String NAME = "centre-distance";

    public static final Input<Length> OVER = Input.positiveLength("over");
    public static final Input<Length> BETWEEN = Input.lengthNotNegative("between");
    public static final Input<Length> WEB = Input.lengthNotNegative("web");
    public static final Input<Length> FIRST = Input.positiveLength("first");
    public static final Input<Length> SECOND = Input.positiveLength("second");
    public static final Output<Length> DISTANCE = Output.length("distance");
    private static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takesOneOf(OVER, BETWEEN, WEB)
            .takes(FIRST, SECOND)
            .gives(DISTANCE);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Input<?> way = given.oneOf(OVER, BETWEEN, WEB);
        Length first = given.get(FIRST);
        Length second = given.get(SECOND);
        Length distance = given.about(
                way,
                () -> given.has(OVER)
                        ? CentreDistance.over(given.get(OVER), first, second)
                        : CentreDistance.between(given.get(given.has(WEB) ? WEB : BETWEEN), first, second));
        return DESCRIPTION
                .in(given.inUnit())
                .put(DISTANCE, distance)
                .note(given.has(WEB) ? "edges" : "plugs")
                .done();
    }
}
