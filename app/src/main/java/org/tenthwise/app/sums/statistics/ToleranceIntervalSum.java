package org.tenthwise.app.sums.statistics;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Set;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.statistics.Sample;
import org.tenthwise.model.compute.statistics.ToleranceFactor;

/** Between what sizes a stated share of all parts lies. */
final class ToleranceIntervalSum implements Sum {

    private static final int FEW = 10;

    @Override
    public String name() {
        return "tolerance-interval";
    }

    @Override
    public Set<String> keys() {
        return Set.of(SampleInputs.VALUES, "n", "mean", "sd", "cover", "confidence", "sides");
    }

    @Override
    public SumResult of(SumInput given) {
        BigDecimal cover = SampleInputs.share(given, "cover");
        BigDecimal confidence = SampleInputs.share(given, SampleInputs.CONFIDENCE);
        int sides = given.whole("sides", 1, 2);
        boolean factorOnly = !given.has(SampleInputs.VALUES) && !given.has("mean") && !given.has("sd");
        if (factorOnly && !given.has(SampleInputs.N)) {
            throw new CannotAnswer(
                    SampleInputs.VALUES,
                    "values is missing: give the readings, or n, mean and sd, or n alone for the factor");
        }
        int n = factorOnly
                ? given.whole("n", 2, SampleInputs.MOST_PARTS)
                : SampleInputs.sample(given).n();
        double k = sides == 2
                ? ToleranceFactor.bothSides(n, cover.doubleValue(), confidence.doubleValue())
                : ToleranceFactor.oneSide(n, cover.doubleValue(), confidence.doubleValue());
        SumResult.Writing answer = SumResult.in(SampleInputs.unit(given)).figure("k", k);
        if (!factorOnly) {
            Sample sample = SampleInputs.sample(given);
            BigDecimal reach = new BigDecimal(k).multiply(sample.sd());
            answer.figure("low", sample.mean().subtract(reach).doubleValue())
                    .figure("high", sample.mean().add(reach).doubleValue());
        }
        if (sides == 1) {
            answer.note(
                    "One side: low alone, or high alone, holds with %s confidence for %s of the parts, not both at once"
                            .formatted(Wording.percent(confidence), Wording.percent(cover)));
        }
        if (sides == 2) {
            answer.note(howe(ToleranceFactor.byHowe(n, cover.doubleValue(), confidence.doubleValue()), k));
        }
        if (n < FEW) {
            answer.note("%d parts: the interval is wide because so few say little, and it holds for normal spread only"
                    .formatted(n));
        }
        return answer.on(
                sides == 2
                        ? "Exact, by an integral over mean and spread; ISO 16269-6:2014, Annex F"
                        : "Exact, by non-central t; ISO 16269-6:2014");
    }

    /** How far off the factor is that many tables print. */
    private static String howe(double approximate, double exact) {
        double percent = 100 * (approximate / exact - 1);
        return "k is the exact factor; Howe's approximation, which many tables print, is %s, %s %% %s"
                .formatted(
                        BigDecimal.valueOf(approximate)
                                .setScale(4, RoundingMode.HALF_EVEN)
                                .toPlainString(),
                        BigDecimal.valueOf(Math.abs(percent))
                                .setScale(2, RoundingMode.HALF_EVEN)
                                .toPlainString(),
                        percent < 0 ? "less" : "more");
    }
}
