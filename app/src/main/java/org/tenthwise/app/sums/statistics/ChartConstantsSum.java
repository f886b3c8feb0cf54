package org.tenthwise.app.sums.statistics;

import java.util.Set;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.statistics.ChartConstants;

/** The factors of charts with ranges. */
final class ChartConstantsSum implements Sum {

    @Override
    public String name() {
        return "chart-constants";
    }

    @Override
    public Set<String> keys() {
        return Set.of("n");
    }

    @Override
    public SumResult of(SumInput given) {
        ChartConstants constants = ChartConstants.of(given.whole("n", 2, ChartConstants.MOST_READINGS));
        return SumResult.in(SampleInputs.unit(given))
                .figure("d2", constants.d2())
                .figure("d3", constants.d3())
                .figure("a2", constants.a2())
                .figure("d3_lower", constants.d3Lower())
                .figure("d4_upper", constants.d4Upper())
                .figure("e2", constants.e2())
                .on("ASTM E2587 and ISO 7870-2, worked out from the distribution of the range");
    }
}
