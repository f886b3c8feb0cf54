package org.tenthwise.app.sums.statistics;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.statistics.Sample;
import org.tenthwise.model.compute.statistics.ToleranceFactor;

/** Between what sizes a stated share of all parts lies. */
public final class ToleranceIntervalSum implements Sum {

    public static final Input<BigDecimal> COVER = SampleInputs.share("cover");
    public static final Input<BigDecimal> CONFIDENCE = SampleInputs.share("confidence");
    public static final Input<Integer> SIDES = Input.whole("sides", 1, 2);
    public static final Output<Double> K = Output.figure("k");
    public static final Output<Double> LOW = Output.figure("low").sometimes();
    public static final Output<Double> HIGH = Output.figure("high").sometimes();
    private static final SumDescription DESCRIPTION = SumDescription.named("tolerance-interval")
            .takesOneOf(SampleInputs.VALUES, SampleInputs.N)
            .takes(SampleInputs.MEAN, SampleInputs.SD, COVER, CONFIDENCE, SIDES)
            .gives(K, LOW, HIGH)
            .on("both", "one");

    private static final int FEW = 10;

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        BigDecimal cover = given.get(COVER);
        BigDecimal confidence = given.get(CONFIDENCE);
        int sides = given.get(SIDES);
        boolean factorOnly =
                !given.has(SampleInputs.VALUES) && !given.has(SampleInputs.MEAN) && !given.has(SampleInputs.SD);
        if (factorOnly && !given.has(SampleInputs.N)) {
            throw new CannotAnswer(SampleInputs.VALUES, "factor");
        }
        int n = factorOnly
                ? given.get(SampleInputs.N)
                : SampleInputs.sample(given).n();
        double k = sides == 2
                ? ToleranceFactor.bothSides(n, cover.doubleValue(), confidence.doubleValue())
                : ToleranceFactor.oneSide(n, cover.doubleValue(), confidence.doubleValue());
        SumResult.Writing answer = DESCRIPTION.in(given.anyUnit()).put(K, k);
        if (!factorOnly) {
            Sample sample = SampleInputs.sample(given);
            BigDecimal reach = new BigDecimal(k).multiply(sample.sd());
            answer.put(LOW, sample.mean().subtract(reach).doubleValue())
                    .put(HIGH, sample.mean().add(reach).doubleValue());
        }
        if (sides == 1) {
            answer.note("one-side", Wording.percent(confidence), Wording.percent(cover));
        }
        if (sides == 2) {
            howe(answer, ToleranceFactor.byHowe(n, cover.doubleValue(), confidence.doubleValue()), k);
        }
        if (n < FEW) {
            answer.note("few", n);
        }
        return answer.on(sides == 2 ? "both" : "one");
    }

    /** How far off the factor is that many tables print. */
    private static void howe(SumResult.Writing answer, double approximate, double exact) {
        double percent = 100 * (approximate / exact - 1);
        answer.note(
                percent < 0 ? "howe-less" : "howe-more",
                BigDecimal.valueOf(approximate).setScale(4, RoundingMode.HALF_EVEN),
                BigDecimal.valueOf(Math.abs(percent)).setScale(2, RoundingMode.HALF_EVEN));
    }
}
