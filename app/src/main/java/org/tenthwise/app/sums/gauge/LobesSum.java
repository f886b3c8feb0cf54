package org.tenthwise.app.sums.gauge;

import java.math.BigDecimal;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.comparison.Lobes;

/** What a gauge with two or three points sees of out-of-round work. */
public final class LobesSum implements Sum {

    private static final int MOST_LOBES = 1000;

    public static final Input<Integer> LOBES = Input.whole("lobes", 2, MOST_LOBES);
    public static final Input<BigDecimal> V_ANGLE =
            Input.figure("v_angle").in(Quantity.ANGLE).bounded("bound");
    public static final Output<Double> MAGNIFICATION = Output.figure("magnification");
    private static final SumDescription DESCRIPTION =
            SumDescription.named("lobes").takes(LOBES, V_ANGLE).gives(MAGNIFICATION);

    private static final BigDecimal TWO_POINTS = BigDecimal.valueOf(180);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        int number = given.get(LOBES);
        BigDecimal angle = given.get(V_ANGLE);
        Lobes lobes = new Lobes(angle);
        SumResult.Writing answer = DESCRIPTION.in(given.anyUnit()).put(MAGNIFICATION, lobes.magnification(number));
        boolean twoPoints = angle.compareTo(TWO_POINTS) == 0;
        if (lobes.misses(number)) {
            answer.note(twoPoints ? "two-points-miss" : "vee-misses", number, angle);
        }
        if (!lobes.missed().isEmpty()) {
            answer.note(twoPoints ? "two-points" : "vee", lobes.missed(), angle);
        }
        return answer.done();
    }
}
