package org.tenthwise.app.sums.temperature;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.temperature.WorstCorrection;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.TemperatureRange;
import org.tenthwise.model.words.Message;

/** <em>temperature-matters</em>: whether the largest correction a shop can need is felt by a tolerance. */
public final class TemperatureMattersSum implements Sum {

    public static final Input<Length> SIZE = Input.positiveLength("size");
    public static final Input<Length> TOLERANCE = Input.positiveLength("tolerance");
    public static final Input<Expansion> PART_ALPHA = TemperatureInputs.expansion("part_alpha");
    public static final Input<Expansion> GAUGE_ALPHA = TemperatureInputs.expansion("gauge_alpha");
    public static final Input<Celsius> PART_LEAST = TemperatureInputs.temperature("part_least");
    public static final Input<Celsius> PART_GREATEST = TemperatureInputs.temperature("part_greatest");
    public static final Input<Celsius> GAUGE_LEAST =
            TemperatureInputs.temperature("gauge_least").optional();
    public static final Input<Celsius> GAUGE_GREATEST =
            TemperatureInputs.temperature("gauge_greatest").optional();
    public static final Output<Length> WORST = Output.length("worst");
    public static final Output<BigDecimal> SHARE = Output.exact("share");
    public static final Output<String> MATTERS = Output.word("matters", "yes", "no");
    private static final SumDescription DESCRIPTION = SumDescription.named("temperature-matters")
            .takes(SIZE, TOLERANCE, PART_ALPHA, GAUGE_ALPHA, PART_LEAST, PART_GREATEST, GAUGE_LEAST, GAUGE_GREATEST)
            .gives(WORST, SHARE, MATTERS);

    private static final MathContext FIGURES = new MathContext(12, RoundingMode.HALF_EVEN);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        TemperatureRange part = TemperatureInputs.range(given, PART_LEAST, PART_GREATEST);
        Length tolerance = given.get(TOLERANCE);
        WorstCorrection worst = WorstCorrection.of(
                given.get(SIZE), given.get(PART_ALPHA), part, given.get(GAUGE_ALPHA), gauge(given, part));
        boolean matters = worst.mattersIn(tolerance);
        BigDecimal share = worst.shareOf(tolerance).round(FIGURES);
        SumResult.Writing answer = DESCRIPTION
                .in(given.inUnit())
                .put(WORST, worst.worst())
                .put(SHARE, share.signum() == 0 ? BigDecimal.ZERO : share)
                .put(MATTERS, matters ? "yes" : "no")
                .note(matters ? "yes" : "no");
        if (!given.has(GAUGE_LEAST)) {
            answer.note("no-gauge");
        }
        return answer.done();
    }

    /** That of the part where nothing else is said of the gauge. */
    private static TemperatureRange gauge(SumInput given, TemperatureRange part) {
        if (given.has(GAUGE_LEAST) != given.has(GAUGE_GREATEST)) {
            Input<Celsius> there = given.has(GAUGE_LEAST) ? GAUGE_LEAST : GAUGE_GREATEST;
            throw new CannotAnswer(there, Message.of("given.stands-alone", there, GAUGE_LEAST, GAUGE_GREATEST));
        }
        return given.has(GAUGE_LEAST) ? TemperatureInputs.range(given, GAUGE_LEAST, GAUGE_GREATEST) : part;
    }
}
