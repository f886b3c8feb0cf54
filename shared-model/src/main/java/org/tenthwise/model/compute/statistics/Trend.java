package org.tenthwise.model.compute.statistics;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.words.Refused;

/**
 * The straight line that fits readings best over their part numbers.
 *
 * <p>With Sxx, Sxy, Syy the sums of squares and products about the means: slope b = Sxy / Sxx; intercept a = mean y − b
 * · mean x; residual s = √((Syy − b Sxy) / (n − 2)); s of the slope = s / √Sxx; s of the intercept = s √(1/n + mean x²
 * / Sxx); determination = Sxy² / (Sxx Syy). Interval of the slope: b ± t<sub>1−α/2,n−2</sub> · s of the slope.
 *
 * <p>Slope in units of y per unit of x, above zero where y grows. Twenty figures, intervals a double's.
 *
 * <p>Two points always lie on a line, so there is no {@link Scatter} about it below three. Equal y give slope 0. All x
 * alike, or fewer than two points, have no line and are refused.
 *
 * <p>Source: NIST/SEMATECH e-Handbook 2.3.6 and 4.1.4.1; M. G. Natrella, Experimental Statistics, NBS Handbook 91, 5-3.
 * Sums run over exact decimal differences, so a shift of x or y costs no figure.
 *
 * @param sxx sum of the squares of x about their mean
 * @param scatter absent for two points
 */
public record Trend(
        int n, BigDecimal meanX, BigDecimal sxx, BigDecimal slope, BigDecimal intercept, Optional<Scatter> scatter) {

    /**
     * How the points lie about the line.
     *
     * @param determination share of the spread of y that the line explains; absent where all y are alike
     */
    public record Scatter(
            BigDecimal residualSd, BigDecimal slopeSd, BigDecimal interceptSd, Optional<BigDecimal> determination) {}

    /** @throws IllegalArgumentException if x and y are not equally many, are fewer than two, or all x are alike */
    public static Trend of(List<BigDecimal> x, List<BigDecimal> y) {
        if (x.size() != y.size()) {
            throw new Refused("model.trend.x-values", x.size(), y.size());
        }
        if (x.size() < 2) {
            throw new Refused("model.trend.one-point");
        }
        BigDecimal count = BigDecimal.valueOf(x.size());
        List<BigDecimal> fromFirstX = fromFirst(x);
        List<BigDecimal> fromFirstY = fromFirst(y);
        BigDecimal sumX = sum(fromFirstX);
        BigDecimal sumY = sum(fromFirstY);
        BigDecimal timesXx = count.multiply(products(fromFirstX, fromFirstX)).subtract(sumX.multiply(sumX));
        BigDecimal timesXy = count.multiply(products(fromFirstX, fromFirstY)).subtract(sumX.multiply(sumY));
        BigDecimal timesYy = count.multiply(products(fromFirstY, fromFirstY)).subtract(sumY.multiply(sumY));
        if (timesXx.signum() == 0) {
            throw new Refused("model.trend.every-x", x.get(0).toPlainString());
        }
        BigDecimal meanX = x.get(0).add(sumX.divide(count, Precision.WORKING));
        BigDecimal meanY = y.get(0).add(sumY.divide(count, Precision.WORKING));
        BigDecimal slope = timesXy.divide(timesXx, Precision.WORKING);
        BigDecimal intercept = meanY.subtract(slope.multiply(meanX));
        Optional<Scatter> scatter =
                x.size() < 3 ? Optional.empty() : Optional.of(scatter(count, meanX, timesXx, timesXy, timesYy));
        return new Trend(
                x.size(),
                meanX,
                timesXx.divide(count, Precision.WORKING),
                slope.round(Precision.RESULT),
                intercept.round(Precision.RESULT),
                scatter);
    }

    /** Of the slope; absent for two points. */
    public Optional<Interval> slopeInterval(double confidence) {
        return scatter.map(about -> {
            double reach = t(confidence) * about.slopeSd().doubleValue();
            return new Interval(slope.doubleValue() - reach, slope.doubleValue() + reach);
        });
    }

    /**
     * How far a single part at {@code x} may lie from the line, either way: t · s · √(1 + 1/n + (x − mean x)² / Sxx).
     *
     * <p>Source: NIST/SEMATECH e-Handbook 4.1.4.1; Natrella, NBS Handbook 91, 5-4.1. Where it meets a limit,
     * {@link LimitReached} puts the ends of the interval of a single part.
     *
     * @throws java.util.NoSuchElementException for two points, which have no scatter
     */
    public double singleReach(BigDecimal x, double confidence) {
        double off = x.subtract(meanX).doubleValue();
        double residual = scatter.orElseThrow().residualSd().doubleValue();
        return t(confidence) * residual * Math.sqrt(1 + 1.0 / n + off * off / sxx.doubleValue());
    }

    /** The quantile of Student's distribution that leaves half of what is not confidence at either end. */
    double t(double confidence) {
        return Quantile.ofStudent(n - 2.0, (1 - Share.check("confidence", confidence)) / 2);
    }

    /** The sums come n times too large, so that they are exact. */
    private static Scatter scatter(
            BigDecimal count, BigDecimal meanX, BigDecimal timesXx, BigDecimal timesXy, BigDecimal timesYy) {
        BigDecimal leftOver = timesYy.multiply(timesXx).subtract(timesXy.multiply(timesXy));
        BigDecimal freedom = count.subtract(BigDecimal.valueOf(2));
        BigDecimal residualSd = Precision.root(leftOver, count.multiply(timesXx).multiply(freedom));
        BigDecimal slopeSd = Precision.root(leftOver, timesXx.multiply(timesXx).multiply(freedom));
        BigDecimal interceptSd = Precision.root(
                leftOver.multiply(
                        timesXx.add(count.multiply(count).multiply(meanX).multiply(meanX))),
                count.multiply(count).multiply(timesXx).multiply(timesXx).multiply(freedom));
        return new Scatter(
                residualSd,
                slopeSd,
                interceptSd,
                timesYy.signum() == 0
                        ? Optional.empty()
                        : Optional.of(Precision.quotient(timesXy.multiply(timesXy), timesXx.multiply(timesYy))));
    }

    private static List<BigDecimal> fromFirst(List<BigDecimal> values) {
        return values.stream().map(value -> value.subtract(values.get(0))).toList();
    }

    private static BigDecimal sum(List<BigDecimal> values) {
        return values.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal products(List<BigDecimal> left, List<BigDecimal> right) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int i = 0; i < left.size(); i++) {
            sum = sum.add(left.get(i).multiply(right.get(i)));
        }
        return sum;
    }
}
