package org.tenthwise.app.sums.statistics;

import java.math.BigDecimal;
import java.util.Set;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.statistics.RejectRate;

/** How large the reject rate may still be. */
final class ZeroRejectsSum implements Sum {

    @Override
    public String name() {
        return "zero-rejects";
    }

    @Override
    public Set<String> keys() {
        return Set.of("n", "rejects", "confidence");
    }

    @Override
    public SumResult of(SumInput given) {
        int n = given.whole("n", 1, SampleInputs.MOST_PARTS);
        int rejects = given.ifGiven("rejects", key -> given.whole(key, 0, SampleInputs.MOST_PARTS))
                .orElse(0);
        if (rejects > n) {
            throw new CannotAnswer(
                    "rejects", "rejects is %d: there are no more than the %d parts of n".formatted(rejects, n));
        }
        BigDecimal confidence = SampleInputs.confidence(given);
        RejectRate rate = RejectRate.of(n, rejects, confidence.doubleValue());
        return SumResult.in(SampleInputs.unit(given))
                .figure("upper", rate.upper())
                .figure("lower", rate.lower())
                .note("%d rejects in %d parts: with %s confidence the reject rate of parts made alike is at %s"
                        .formatted(
                                rejects,
                                n,
                                Wording.percent(confidence),
                                rejects == n
                                        ? "least " + Wording.atLeastPercent(rate.lower())
                                        : "most " + Wording.atMostPercent(rate.upper())))
                .on(
                        rejects == 0
                                ? "Clopper and Pearson (1934); all of 1 - confidence above the upper bound"
                                : "Clopper and Pearson (1934); NIST/SEMATECH e-Handbook 7.2.4.2; half of 1 - "
                                        + "confidence at either end");
    }
}
