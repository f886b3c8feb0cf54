package org.tenthwise.app.sums.statistics;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.model.compute.statistics.Sample;
import org.tenthwise.model.quantity.Unit;

/** What several of these sums are given in the same way. */
final class SampleInputs {

    static final String VALUES = "values";
    static final String N = "n";
    static final String CONFIDENCE = "confidence";
    static final BigDecimal USUAL_CONFIDENCE = new BigDecimal("0.95");
    static final int MOST_PARTS = 100_000_000;

    private static final Set<String> IN_SHORT = Set.of("n", "mean", "sd");
    private static final BigDecimal CLOSEST = new BigDecimal("1e-9");

    private SampleInputs() {}

    /** The figures are what they are in any unit, so a unit need not be given. */
    static Unit unit(SumInput given) {
        return given.unit().orElse(Unit.MILLIMETRE);
    }

    /** Readings, or how many there were, their mean and their standard deviation; not both. */
    static Sample sample(SumInput given) {
        if (!given.has(VALUES)) {
            if (!given.has(N)) {
                throw new CannotAnswer(VALUES, "values is missing: give the readings, or n, mean and sd");
            }
            int n = given.whole(N, 2, MOST_PARTS);
            BigDecimal mean = given.figure("mean");
            BigDecimal sd = given.notNegative("sd");
            return given.about("sd", () -> new Sample(n, mean, sd));
        }
        IN_SHORT.stream().sorted().filter(given::has).findFirst().ifPresent(key -> {
            throw new CannotAnswer(key, "%s is given beside values: it is one or the other".formatted(key));
        });
        List<BigDecimal> values = given.figures(VALUES);
        return given.about(VALUES, () -> Sample.of(values));
    }

    /** A share between 0 and 1. */
    static BigDecimal share(SumInput given, String key) {
        BigDecimal share = given.figure(key);
        if (share.compareTo(CLOSEST) < 0 || share.compareTo(BigDecimal.ONE.subtract(CLOSEST)) > 0) {
            throw new CannotAnswer(
                    key, "%s is %s: it is a share between 0 and 1, such as 0.95".formatted(key, given.text(key)));
        }
        return share;
    }

    static BigDecimal confidence(SumInput given) {
        return given.ifGiven(CONFIDENCE, key -> share(given, key)).orElse(USUAL_CONFIDENCE);
    }
}
