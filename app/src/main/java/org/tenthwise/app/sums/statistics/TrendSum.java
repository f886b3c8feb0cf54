package org.tenthwise.app.sums.statistics;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.List;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.statistics.DriftPower;
import org.tenthwise.model.compute.statistics.Interval;
import org.tenthwise.model.compute.statistics.LimitReached;
import org.tenthwise.model.compute.statistics.Summary;
import org.tenthwise.model.compute.statistics.Trend;

/** Which way the readings go, and when they meet a limit. */
public final class TrendSum implements Sum {

    public static final Input<List<BigDecimal>> X = Input.figures("x");
    public static final Input<List<BigDecimal>> Y = Input.figures("y");
    public static final Input<BigDecimal> LIMIT = Input.figure("limit").optional();
    public static final Output<BigDecimal> SLOPE = Output.full("slope");
    public static final Output<BigDecimal> INTERCEPT = Output.full("intercept");
    public static final Output<Double> SLOPE_LOW = Output.figure("slope_low").sometimes();
    public static final Output<Double> SLOPE_HIGH = Output.figure("slope_high").sometimes();
    public static final Output<BigDecimal> RESIDUAL_SD =
            Output.full("residual_sd").sometimes();
    public static final Output<BigDecimal> SLOPE_SD = Output.full("slope_sd").sometimes();
    public static final Output<BigDecimal> INTERCEPT_SD =
            Output.full("intercept_sd").sometimes();
    public static final Output<BigDecimal> DETERMINATION =
            Output.full("determination").sometimes();
    public static final Output<Double> G = Output.figure("g").sometimes();
    public static final Output<String> PREDICTION =
            Output.word("prediction", "none").sometimes();
    public static final Output<Double> REACHED_AT = Output.figure("reached_at").sometimes();
    public static final Output<Double> REACHED_LOW =
            Output.figure("reached_low").sometimes();
    public static final Output<Double> REACHED_HIGH =
            Output.figure("reached_high").sometimes();
    public static final Output<Double> SINGLE_LOW = Output.figure("single_low").sometimes();
    public static final Output<Double> SINGLE_HIGH =
            Output.figure("single_high").sometimes();
    private static final SumDescription DESCRIPTION = SumDescription.named("trend")
            .takes(X, Y, LIMIT, SampleInputs.CONFIDENCE)
            .gives(
                    SLOPE,
                    INTERCEPT,
                    SLOPE_LOW,
                    SLOPE_HIGH,
                    RESIDUAL_SD,
                    SLOPE_SD,
                    INTERCEPT_SD,
                    DETERMINATION,
                    G,
                    PREDICTION,
                    REACHED_AT,
                    REACHED_LOW,
                    REACHED_HIGH,
                    SINGLE_LOW,
                    SINGLE_HIGH);

    /** The drift a shop would want to hear of: three standard deviations over the run. */
    private static final double DRIFT = 3;

    private static final int SHORT_SERIES = 20;

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        List<BigDecimal> x = given.get(X);
        BigDecimal confidence = given.find(SampleInputs.CONFIDENCE).orElse(SampleInputs.USUAL_CONFIDENCE);
        List<BigDecimal> y = given.get(Y);
        Trend trend = given.about(X, () -> Trend.of(x, y));
        SumResult.Writing answer =
                DESCRIPTION.in(given.anyUnit()).put(SLOPE, trend.slope()).put(INTERCEPT, trend.intercept());
        trend.slopeInterval(confidence.doubleValue())
                .ifPresent(interval -> answer.put(SLOPE_LOW, interval.low()).put(SLOPE_HIGH, interval.high()));
        trend.scatter().ifPresent(scatter -> {
            answer.put(RESIDUAL_SD, scatter.residualSd())
                    .put(SLOPE_SD, scatter.slopeSd())
                    .put(INTERCEPT_SD, scatter.interceptSd());
            scatter.determination().ifPresent(share -> answer.put(DETERMINATION, share));
        });
        given.find(LIMIT)
                .ifPresent(limit -> predict(answer, x, trend, LimitReached.of(trend, limit, confidence.doubleValue())));
        if (Summary.of(y).range().signum() == 0) {
            answer.note("level");
        } else {
            drift(answer, x, trend, confidence);
        }
        if (Summary.of(y).coarse()) {
            answer.note("coarse");
        }
        return answer.done();
    }

    private static void predict(SumResult.Writing answer, List<BigDecimal> x, Trend trend, LimitReached reached) {
        reached.g().ifPresent(g -> answer.put(G, g));
        if (reached.prediction().isEmpty()) {
            answer.put(PREDICTION, "none")
                    .note(trend.n() < 3 ? "none-of-two" : trend.slope().signum() == 0 ? "none-level" : "none");
            return;
        }
        LimitReached.Prediction prediction = reached.prediction().get();
        answer.put(REACHED_AT, prediction.at().doubleValue())
                .put(REACHED_LOW, prediction.low().doubleValue())
                .put(REACHED_HIGH, prediction.high().doubleValue())
                .put(SINGLE_LOW, prediction.singleLow().doubleValue())
                .put(SINGLE_HIGH, prediction.singleHigh().doubleValue());
        BigDecimal last = Collections.max(x);
        BigDecimal length = last.subtract(Collections.min(x));
        if (prediction.at().compareTo(Collections.min(x)) < 0) {
            answer.note("away");
        } else if (prediction.singleLow().compareTo(last) > 0) {
            answer.note("measure-at", prediction.singleLow().setScale(0, RoundingMode.FLOOR));
        } else if (prediction.at().compareTo(last) > 0) {
            answer.note("next-part");
        }
        if (prediction.at().compareTo(last.add(length)) > 0) {
            answer.note("far-ahead");
        }
        if (reached.uncertain()) {
            answer.note("barely");
        }
    }

    private static void drift(SumResult.Writing answer, List<BigDecimal> x, Trend trend, BigDecimal confidence) {
        if (trend.n() < 3) {
            answer.note("two-points");
            return;
        }
        Interval slope = trend.slopeInterval(confidence.doubleValue()).orElseThrow();
        if (slope.low() <= 0 && slope.high() >= 0) {
            answer.note(
                    "no-drift",
                    trend.n(),
                    Wording.atMostPercent(1 - DriftPower.of(trend, x, DRIFT, confidence.doubleValue())));
        } else if (trend.n() < SHORT_SERIES) {
            answer.note("short", trend.n());
        }
    }
}
