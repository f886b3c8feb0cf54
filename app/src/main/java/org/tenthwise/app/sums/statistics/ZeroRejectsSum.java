package org.tenthwise.app.sums.statistics;

import java.math.BigDecimal;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.statistics.RejectRate;

/** How large the reject rate may still be. */
public final class ZeroRejectsSum implements Sum {

    public static final Input<Integer> N = Input.whole("n", 1, SampleInputs.MOST_PARTS);
    public static final Input<Integer> REJECTS =
            Input.whole("rejects", 0, SampleInputs.MOST_PARTS).usually("0");
    public static final Output<Double> UPPER = Output.figure("upper");
    public static final Output<Double> LOWER = Output.figure("lower");
    private static final SumDescription DESCRIPTION = SumDescription.named("zero-rejects")
            .takes(N, REJECTS, SampleInputs.CONFIDENCE)
            .gives(UPPER, LOWER)
            .on("one-sided", "two-sided");

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        int n = given.get(N);
        int rejects = given.find(REJECTS).orElse(0);
        if (rejects > n) {
            throw new CannotAnswer(REJECTS, "beyond", rejects, n);
        }
        BigDecimal confidence = given.find(SampleInputs.CONFIDENCE).orElse(SampleInputs.USUAL_CONFIDENCE);
        RejectRate rate = RejectRate.of(n, rejects, confidence.doubleValue());
        return DESCRIPTION
                .in(given.anyUnit())
                .put(UPPER, rate.upper())
                .put(LOWER, rate.lower())
                .note(
                        rejects == n ? "at-least" : "at-most",
                        rejects,
                        n,
                        Wording.percent(confidence),
                        rejects == n ? Wording.atLeastPercent(rate.lower()) : Wording.atMostPercent(rate.upper()))
                .on(rejects == 0 ? "one-sided" : "two-sided");
    }
}
