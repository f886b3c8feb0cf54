package org.tenthwise.app.sums.statistics;

import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.statistics.ChartConstants;

/** The factors of charts with ranges. */
public final class ChartConstantsSum implements Sum {

    public static final Input<Integer> N = Input.whole("n", 2, ChartConstants.MOST_READINGS);
    public static final Output<Double> D2 = Output.figure("d2");
    public static final Output<Double> D3 = Output.figure("d3");
    public static final Output<Double> A2 = Output.figure("a2");
    public static final Output<Double> D3_LOWER = Output.figure("d3_lower");
    public static final Output<Double> D4_UPPER = Output.figure("d4_upper");
    public static final Output<Double> E2 = Output.figure("e2");
    private static final SumDescription DESCRIPTION =
            SumDescription.named("chart-constants").takes(N).gives(D2, D3, A2, D3_LOWER, D4_UPPER, E2);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        ChartConstants constants = ChartConstants.of(given.get(N));
        return DESCRIPTION
                .in(given.anyUnit())
                .put(D2, constants.d2())
                .put(D3, constants.d3())
                .put(A2, constants.a2())
                .put(D3_LOWER, constants.d3Lower())
                .put(D4_UPPER, constants.d4Upper())
                .put(E2, constants.e2())
                .done();
    }
}
