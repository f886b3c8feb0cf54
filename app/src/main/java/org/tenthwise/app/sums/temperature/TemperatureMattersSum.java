package org.tenthwise.app.sums.temperature;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Set;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.temperature.WorstCorrection;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.TemperatureRange;

/** <em>temperature-matters</em>: whether the largest correction a shop can need is felt by a tolerance. */
final class TemperatureMattersSum implements Sum {

    private static final String PART_LEAST = "part_least";
    private static final String PART_GREATEST = "part_greatest";
    private static final String GAUGE_LEAST = "gauge_least";
    private static final String GAUGE_GREATEST = "gauge_greatest";
    private static final MathContext FIGURES = new MathContext(12, RoundingMode.HALF_EVEN);

    @Override
    public String name() {
        return "temperature-matters";
    }

    @Override
    public Set<String> keys() {
        return Set.of(
                "size",
                "tolerance",
                "part_alpha",
                "gauge_alpha",
                PART_LEAST,
                PART_GREATEST,
                GAUGE_LEAST,
                GAUGE_GREATEST);
    }

    @Override
    public SumResult of(SumInput given) {
        TemperatureRange part = TemperatureInputs.range(given, PART_LEAST, PART_GREATEST);
        Length tolerance = given.positiveLength("tolerance");
        WorstCorrection worst = WorstCorrection.of(
                given.positiveLength("size"),
                TemperatureInputs.expansion(given, "part_alpha"),
                part,
                TemperatureInputs.expansion(given, "gauge_alpha"),
                gauge(given, part));
        boolean matters = worst.mattersIn(tolerance);
        BigDecimal share = worst.shareOf(tolerance).round(FIGURES);
        SumResult.Writing answer = SumResult.in(given.inUnit())
                .length("worst", worst.worst())
                .exact("share", share.signum() == 0 ? BigDecimal.ZERO : share)
                .word("matters", matters ? "yes" : "no")
                .note(
                        matters
                                ? "Read the temperature of the part and of the gauge and correct: the shop can "
                                        + "shift the size by more than a twentieth of the tolerance."
                                : "Temperature does not matter here: the shop cannot shift the size by more than a "
                                        + "twentieth of the tolerance.");
        if (!given.has(GAUGE_LEAST)) {
            answer.note(
                    "Nothing is said of the gauge: it was taken to be anywhere in the range of the part, by itself.");
        }
        return answer.on("JCGM 100:2008, H.1, at the corners of both ranges; the twentieth is common practice");
    }

    /** That of the part where nothing else is said of the gauge. */
    private static TemperatureRange gauge(SumInput given, TemperatureRange part) {
        if (given.has(GAUGE_LEAST) != given.has(GAUGE_GREATEST)) {
            String there = given.has(GAUGE_LEAST) ? GAUGE_LEAST : GAUGE_GREATEST;
            throw new CannotAnswer(
                    there, "%s stands alone: give %s and %s, or neither".formatted(there, GAUGE_LEAST, GAUGE_GREATEST));
        }
        return given.has(GAUGE_LEAST) ? TemperatureInputs.range(given, GAUGE_LEAST, GAUGE_GREATEST) : part;
    }
}
