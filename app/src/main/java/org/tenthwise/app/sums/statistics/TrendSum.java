package org.tenthwise.app.sums.statistics;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.statistics.DriftPower;
import org.tenthwise.model.compute.statistics.Interval;
import org.tenthwise.model.compute.statistics.LimitReached;
import org.tenthwise.model.compute.statistics.Summary;
import org.tenthwise.model.compute.statistics.Trend;

/** Which way the readings go, and when they meet a limit. */
final class TrendSum implements Sum {

    /** The drift a shop would want to hear of: three standard deviations over the run. */
    private static final double DRIFT = 3;

    private static final int SHORT_SERIES = 20;

    @Override
    public String name() {
        return "trend";
    }

    @Override
    public Set<String> keys() {
        return Set.of("x", "y", "limit", "confidence");
    }

    @Override
    public SumResult of(SumInput given) {
        List<BigDecimal> x = given.figures("x");
        BigDecimal confidence = SampleInputs.confidence(given);
        List<BigDecimal> y = given.figures("y");
        Trend trend = given.about("x", () -> Trend.of(x, y));
        SumResult.Writing answer = SumResult.in(SampleInputs.unit(given))
                .exact("slope", Wording.full(trend.slope()))
                .exact("intercept", Wording.full(trend.intercept()));
        trend.slopeInterval(confidence.doubleValue()).ifPresent(interval -> answer.figure("slope_low", interval.low())
                .figure("slope_high", interval.high()));
        trend.scatter().ifPresent(scatter -> {
            answer.exact("residual_sd", Wording.full(scatter.residualSd()))
                    .exact("slope_sd", Wording.full(scatter.slopeSd()))
                    .exact("intercept_sd", Wording.full(scatter.interceptSd()));
            scatter.determination().ifPresent(share -> answer.exact("determination", Wording.full(share)));
        });
        given.figureIfGiven("limit")
                .ifPresent(limit -> predict(answer, x, trend, LimitReached.of(trend, limit, confidence.doubleValue())));
        if (Summary.of(y).range().signum() == 0) {
            answer.note("Every y is the same: no drift the gauge could show");
        } else {
            drift(answer, x, trend, confidence);
        }
        if (Summary.of(y).coarse()) {
            answer.note("Fewer than five different values of y: the gauge is too coarse for the drift, and the scatter "
                    + "is mostly its rounding");
        }
        return answer.on(
                "NIST/SEMATECH e-Handbook 4.1.4.1; Natrella, NBS Handbook 91, 5-3 and 5-4; interval of x at the "
                        + "limit by Fieller (1954)");
    }

    private static void predict(SumResult.Writing answer, List<BigDecimal> x, Trend trend, LimitReached reached) {
        reached.g().ifPresent(g -> answer.figure("g", g));
        if (reached.prediction().isEmpty()) {
            answer.word("prediction", "none")
                    .note(
                            trend.n() < 3
                                    ? "Two points always lie on a line: nothing can be said of when the limit is "
                                            + "reached"
                                    : trend.slope().signum() == 0
                                            ? "The line is level: nothing can be said of when the limit is reached"
                                            : "The slope cannot be told from none (g is 1 or more): nothing can be "
                                                    + "said of when the limit is reached");
            return;
        }
        LimitReached.Prediction prediction = reached.prediction().get();
        answer.figure("reached_at", prediction.at().doubleValue())
                .figure("reached_low", prediction.low().doubleValue())
                .figure("reached_high", prediction.high().doubleValue())
                .figure("single_low", prediction.singleLow().doubleValue())
                .figure("single_high", prediction.singleHigh().doubleValue());
        BigDecimal last = Collections.max(x);
        BigDecimal length = last.subtract(Collections.min(x));
        if (prediction.at().compareTo(Collections.min(x)) < 0) {
            answer.note("The line runs away from the limit: it would have met it before the first reading");
        } else if (prediction.singleLow().compareTo(last) > 0) {
            answer.note("Measure again at x = %s, before a single part may reach the limit"
                    .formatted(prediction
                            .singleLow()
                            .setScale(0, RoundingMode.FLOOR)
                            .toPlainString()));
        } else if (prediction.at().compareTo(last) > 0) {
            answer.note("The very next part may reach the limit: measure every one");
        }
        if (prediction.at().compareTo(last.add(length)) > 0) {
            answer.note("The limit lies further ahead than the series is long: wear does not stay on a straight line "
                    + "that far");
        }
        if (reached.uncertain()) {
            answer.note(
                    "The slope is barely shown (g is above 0.2): the far ends of the intervals are not to be relied "
                            + "on");
        }
    }

    private static void drift(SumResult.Writing answer, List<BigDecimal> x, Trend trend, BigDecimal confidence) {
        if (trend.n() < 3) {
            answer.note("Two points always lie on a line: there is no scatter to judge it by");
            return;
        }
        Interval slope = trend.slopeInterval(confidence.doubleValue()).orElseThrow();
        if (slope.low() <= 0 && slope.high() >= 0) {
            answer.note(("No drift shown by %d readings; a drift of three standard deviations over the run would be "
                            + "missed %s of the time")
                    .formatted(
                            trend.n(),
                            Wording.atMostPercent(1 - DriftPower.of(trend, x, DRIFT, confidence.doubleValue()))));
        } else if (trend.n() < SHORT_SERIES) {
            answer.note(
                    "%d readings: if neighbours hang together, the intervals are too narrow, and so few cannot show it"
                            .formatted(trend.n()));
        }
    }
}
