package org.tenthwise.model.compute.statistics;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * Where a trend reaches a limit.
 *
 * <p>x0 = (limit − a) / b; g = t² s_b² / b². Interval of the line: mean x + (x0 − mean x)/(1 − g) ± t s / (|b| (1 − g))
 * · √((1 − g)/n + (x0 − mean x)²/Sxx). Interval of a single next part: the same with (1 − g)(1 + 1/n) in place of (1 −
 * g)/n.
 *
 * <p>In units of x.
 *
 * <p>With g of 1 or more the slope cannot be told from none, and nothing is predicted; nor is it with two points, or a
 * slope of zero. With g above 0.2 the upper ends run far out. Points that lie on the line exactly give intervals
 * without width.
 *
 * <p>Source: E. C. Fieller, Journal of the Royal Statistical Society B 16 (1954) 175; M. G. Natrella, NBS Handbook 91,
 * 5-4.1. The simpler interval without g is too narrow where the slope is uncertain, which is where it matters.
 *
 * @param g absent where there is no scatter or no slope to tell it from
 * @param prediction absent where nothing can be said
 */
public record LimitReached(Optional<Double> g, Optional<Prediction> prediction) {

    private static final double UNCERTAIN = 0.2;

    /** @param at where the line meets the limit */
    public record Prediction(
            BigDecimal at, BigDecimal low, BigDecimal high, BigDecimal singleLow, BigDecimal singleHigh) {}

    /** @throws IllegalArgumentException if confidence is not between 0 and 1 */
    public static LimitReached of(Trend trend, BigDecimal limit, double confidence) {
        if (trend.scatter().isEmpty() || trend.slope().signum() == 0) {
            return new LimitReached(Optional.empty(), Optional.empty());
        }
        Trend.Scatter scatter = trend.scatter().get();
        double t = trend.t(confidence);
        double relative =
                t * scatter.slopeSd().divide(trend.slope(), Precision.WORKING).doubleValue();
        double g = relative * relative;
        if (g >= 1) {
            return new LimitReached(Optional.of(g), Optional.empty());
        }
        BigDecimal at = limit.subtract(trend.intercept()).divide(trend.slope(), Precision.WORKING);
        double out = at.subtract(trend.meanX()).doubleValue();
        double ahead = out * out / trend.sxx().doubleValue();
        double width = t
                * Math.abs(scatter.residualSd()
                        .divide(trend.slope(), Precision.WORKING)
                        .doubleValue())
                / (1 - g);
        double ofLine = width * Math.sqrt((1 - g) / trend.n() + ahead);
        double ofOne = width * Math.sqrt((1 - g) * (1 + 1.0 / trend.n()) + ahead);
        BigDecimal middle = trend.meanX().add(new BigDecimal(out / (1 - g)));
        return new LimitReached(
                Optional.of(g),
                Optional.of(new Prediction(
                        at.round(Precision.RESULT),
                        shifted(middle, -ofLine),
                        shifted(middle, ofLine),
                        shifted(middle, -ofOne),
                        shifted(middle, ofOne))));
    }

    /** The slope is shown, but barely: the far ends of the intervals are not to be relied on. */
    public boolean uncertain() {
        return g.filter(value -> value > UNCERTAIN && value < 1).isPresent();
    }

    private static BigDecimal shifted(BigDecimal middle, double by) {
        return middle.add(new BigDecimal(by)).round(Precision.RESULT);
    }
}
