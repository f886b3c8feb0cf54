package org.tenthwise.app.sums.statistics;

import java.math.BigDecimal;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.statistics.Summary;

/** A series of readings in a few figures. */
public final class SummarySum implements Sum {

    public static final Output<Integer> N = Output.whole("n");
    public static final Output<BigDecimal> MEAN = Output.full("mean");
    public static final Output<BigDecimal> SD = Output.full("sd").sometimes();
    public static final Output<BigDecimal> LEAST = Output.full("least");
    public static final Output<BigDecimal> GREATEST = Output.full("greatest");
    public static final Output<BigDecimal> RANGE = Output.full("range");
    public static final Output<BigDecimal> AUTOCORRELATION =
            Output.full("autocorrelation").sometimes();
    private static final SumDescription DESCRIPTION = SumDescription.named("summary")
            .takes(SampleInputs.VALUES)
            .gives(N, MEAN, SD, LEAST, GREATEST, RANGE, AUTOCORRELATION);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Summary summary = Summary.of(given.get(SampleInputs.VALUES));
        SumResult.Writing answer =
                DESCRIPTION.in(given.anyUnit()).put(N, summary.n()).put(MEAN, summary.mean());
        summary.sd().ifPresent(sd -> answer.put(SD, sd));
        answer.put(LEAST, summary.least()).put(GREATEST, summary.greatest()).put(RANGE, summary.range());
        summary.autocorrelation().ifPresent(lag -> answer.put(AUTOCORRELATION, lag));
        if (summary.n() == 1) {
            answer.note("one");
        } else if (summary.range().signum() == 0) {
            answer.note("same", summary.n());
        } else if (summary.n() == 2) {
            answer.note("two");
        } else if (summary.coarse()) {
            answer.note("coarse", summary.different(), summary.n());
        }
        return answer.done();
    }
}
