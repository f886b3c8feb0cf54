package org.tenthwise.app.sums.statistics;

import java.math.BigDecimal;
import java.util.List;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.model.compute.statistics.Sample;
import org.tenthwise.model.words.Message;

/** What several of these sums are given in the same way. */
public final class SampleInputs {

    private static final BigDecimal CLOSEST = new BigDecimal("1e-9");
    static final int MOST_PARTS = 100_000_000;
    static final BigDecimal USUAL_CONFIDENCE = new BigDecimal("0.95");

    public static final Input<List<BigDecimal>> VALUES = Input.figures("values");
    public static final Input<Integer> N = Input.whole("n", 2, MOST_PARTS);
    public static final Input<BigDecimal> MEAN = Input.figure("mean").optional();
    public static final Input<BigDecimal> SD = Input.notNegative("sd").optional();
    public static final Input<BigDecimal> CONFIDENCE = share("confidence").usually(USUAL_CONFIDENCE.toPlainString());

    private SampleInputs() {}

    /** Readings, or how many there were, their mean and their standard deviation; not both. */
    static Sample sample(SumInput given) {
        if (!given.has(VALUES)) {
            if (!given.has(N)) {
                throw new CannotAnswer(VALUES, "sample");
            }
            int n = given.get(N);
            BigDecimal mean = given.get(MEAN);
            BigDecimal sd = given.get(SD);
            return given.about(SD, () -> new Sample(n, mean, sd));
        }
        for (Input<?> inShort : List.of(MEAN, N, SD)) {
            if (given.has(inShort)) {
                throw new CannotAnswer(inShort, Message.of("given.beside-values", inShort));
            }
        }
        List<BigDecimal> values = given.get(VALUES);
        return given.about(VALUES, () -> Sample.of(values));
    }

    /** A share between 0 and 1. */
    static Input<BigDecimal> share(String key) {
        return Input.figure(key)
                .that(SampleInputs::isShare, Message.of("given.share.bound"), Message.of("given.share.wrong"));
    }

    private static boolean isShare(BigDecimal share) {
        return share.compareTo(CLOSEST) >= 0 && share.compareTo(BigDecimal.ONE.subtract(CLOSEST)) <= 0;
    }
}
