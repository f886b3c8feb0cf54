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
            .on(
                    "Clopper and Pearson (1934); all of 1 - confidence above the upper bound",
                    "Clopper and Pearson (1934); NIST/SEMATECH e-Handbook 7.2.4.2; half of 1 - "
                            + "confidence at either end");

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        int n = given.get(N);
        int rejects = given.find(REJECTS).orElse(0);
        if (rejects > n) {
            throw new CannotAnswer(
                    REJECTS, "rejects is %d: there are no more than the %d parts of n".formatted(rejects, n));
        }
        BigDecimal confidence = given.find(SampleInputs.CONFIDENCE).orElse(SampleInputs.USUAL_CONFIDENCE);
        RejectRate rate = RejectRate.of(n, rejects, confidence.doubleValue());
        return DESCRIPTION
                .in(given.anyUnit())
                .put(UPPER, rate.upper())
                .put(LOWER, rate.lower())
                .note("%d rejects in %d parts: with %s confidence the reject rate of parts made alike is at %s"
                        .formatted(
                                rejects,
                                n,
                                Wording.percent(confidence),
                                rejects == n
                                        ? "least " + Wording.atLeastPercent(rate.lower())
                                        : "most " + Wording.atMostPercent(rate.upper())))
                .on(DESCRIPTION.basis().get(rejects == 0 ? 0 : 1));
    }
}
