package org.tenthwise.app.sums.statistics;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.statistics.Grubbs;

/** Whether the reading furthest out is a misread. */
final class OutlierSum implements Sum {

    private static final BigDecimal USUAL_ALPHA = new BigDecimal("0.05");
    private static final int BLUNT = 5;

    @Override
    public String name() {
        return "outlier";
    }

    @Override
    public Set<String> keys() {
        return Set.of(SampleInputs.VALUES, "sides", "alpha");
    }

    @Override
    public SumResult of(SumInput given) {
        List<BigDecimal> values = given.figures(SampleInputs.VALUES);
        BigDecimal alpha =
                given.ifGiven("alpha", key -> SampleInputs.share(given, key)).orElse(USUAL_ALPHA);
        int sides = given.whole("sides", 1, 2);
        Grubbs test = given.about(SampleInputs.VALUES, () -> Grubbs.of(values, sides, alpha.doubleValue()));
        SumResult.Writing answer = SumResult.in(SampleInputs.unit(given))
                .figure("g", test.g())
                .figure("critical", test.critical())
                .whole("index", test.place())
                .word("outlying", Boolean.toString(test.outlying()))
                .note("index counts from 1: reading %d is %s"
                        .formatted(test.place(), values.get(test.place() - 1).toPlainString()));
        if (sides == 1) {
            answer.note("One side: holds only if no reading at the other end was in question before they were read");
        }
        if (test.outlying()) {
            answer.note(
                    "Measure again and look for a chip or a misread; a reading is never dropped because a test says "
                            + "so");
        }
        if (values.size() <= BLUNT) {
            answer.note(
                    "%d readings: the test misses most misreads; where the range is a few steps of the gauge or more, "
                                    .formatted(values.size())
                            + "read again and take the median");
        }
        return answer.on("Grubbs (1969); NIST/SEMATECH e-Handbook 1.3.5.17.1; ASTM E178");
    }
}
