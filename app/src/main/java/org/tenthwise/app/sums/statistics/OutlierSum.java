package org.tenthwise.app.sums.statistics;

import java.math.BigDecimal;
import java.util.List;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.statistics.Grubbs;

/** Whether the reading furthest out is a misread. */
public final class OutlierSum implements Sum {

    public static final Input<Integer> SIDES = Input.whole("sides", 1, 2);
    public static final Input<BigDecimal> ALPHA = SampleInputs.share("alpha").usually("0.05");
    public static final Output<Double> G = Output.figure("g");
    public static final Output<Double> CRITICAL = Output.figure("critical");
    public static final Output<Integer> INDEX = Output.whole("index");
    public static final Output<String> OUTLYING = Output.word("outlying", "true", "false");
    private static final SumDescription DESCRIPTION = SumDescription.named("outlier")
            .takes(SampleInputs.VALUES, SIDES, ALPHA)
            .gives(G, CRITICAL, INDEX, OUTLYING);

    private static final BigDecimal USUAL_ALPHA = new BigDecimal("0.05");
    private static final int BLUNT = 5;

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        List<BigDecimal> values = given.get(SampleInputs.VALUES);
        BigDecimal alpha = given.find(ALPHA).orElse(USUAL_ALPHA);
        int sides = given.get(SIDES);
        Grubbs test = given.about(SampleInputs.VALUES, () -> Grubbs.of(values, sides, alpha.doubleValue()));
        SumResult.Writing answer = DESCRIPTION
                .in(given.anyUnit())
                .put(G, test.g())
                .put(CRITICAL, test.critical())
                .put(INDEX, test.place())
                .put(OUTLYING, Boolean.toString(test.outlying()))
                .note("index", test.place(), values.get(test.place() - 1));
        if (sides == 1) {
            answer.note("one-side");
        }
        if (test.outlying()) {
            answer.note("again");
        }
        if (values.size() <= BLUNT) {
            answer.note("blunt", values.size());
        }
        return answer.done();
    }
}
