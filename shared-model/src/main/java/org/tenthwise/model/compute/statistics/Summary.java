package org.tenthwise.model.compute.statistics;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.words.Refused;

/**
 * A series of readings in a few figures.
 *
 * <p>Mean = Σx / n; s = √(Σ(x − mean)² / (n − 1)); lag-1 autocorrelation = Σ(x<sub>i</sub> − mean)(x<sub>i+1</sub> −
 * mean) / Σ(x − mean)².
 *
 * <p>Mean, s, least, greatest and range in the unit of the readings; the autocorrelation is a plain number between −1
 * and 1, below zero where readings see-saw and above where they drift. Twenty figures.
 *
 * <p>One reading has no s. Equal readings have s = 0 and no autocorrelation; so has one reading.
 *
 * <p>Source: NIST/SEMATECH e-Handbook 1.3.5.1, 1.3.5.6 and 1.3.5.12. The sums run over exact decimal differences from
 * the first reading, so neither a large mean nor the binary fraction of a decimal reading costs a figure.
 *
 * @param different how many different readings there are; counted up to five
 */
public record Summary(
        int n,
        BigDecimal mean,
        Optional<BigDecimal> sd,
        BigDecimal least,
        BigDecimal greatest,
        BigDecimal range,
        Optional<BigDecimal> autocorrelation,
        int different) {

    private static final int FEW_VALUES = 5;

    /** @throws IllegalArgumentException if there is no reading */
    public static Summary of(List<BigDecimal> readings) {
        if (readings.isEmpty()) {
            throw new Refused("model.summary.nothing-sum");
        }
        int n = readings.size();
        BigDecimal first = readings.get(0);
        List<BigDecimal> deviations = new ArrayList<>(n);
        BigDecimal count = BigDecimal.valueOf(n);
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal squares = BigDecimal.ZERO;
        for (BigDecimal reading : readings) {
            BigDecimal deviation = reading.subtract(first);
            deviations.add(deviation);
            sum = sum.add(deviation);
            squares = squares.add(deviation.multiply(deviation));
        }
        BigDecimal timesSquaresAboutMean = count.multiply(squares).subtract(sum.multiply(sum));
        Optional<BigDecimal> sd = n < 2
                ? Optional.empty()
                : Optional.of(Precision.root(timesSquaresAboutMean, count.multiply(BigDecimal.valueOf(n - 1L))));
        Optional<BigDecimal> autocorrelation = timesSquaresAboutMean.signum() == 0
                ? Optional.empty()
                : Optional.of(Precision.quotient(
                        timesProductsAboutMean(deviations, count, sum), count.multiply(timesSquaresAboutMean)));
        BigDecimal least = Collections.min(readings);
        BigDecimal greatest = Collections.max(readings);
        return new Summary(
                n,
                first.add(sum.divide(count, Precision.WORKING)).round(Precision.RESULT),
                sd,
                least,
                greatest,
                greatest.subtract(least),
                autocorrelation,
                different(readings));
    }

    private static int different(List<BigDecimal> readings) {
        List<BigDecimal> found = new ArrayList<>(FEW_VALUES);
        for (BigDecimal reading : readings) {
            if (found.stream().noneMatch(other -> other.compareTo(reading) == 0)) {
                found.add(reading);
            }
            if (found.size() == FEW_VALUES) {
                break;
            }
        }
        return found.size();
    }

    /** So few different readings that s is mostly the rounding of the gauge. */
    public boolean coarse() {
        return n >= FEW_VALUES && different < FEW_VALUES;
    }

    /** n² times the sum of the products of neighbours, each less the mean. */
    private static BigDecimal timesProductsAboutMean(List<BigDecimal> deviations, BigDecimal count, BigDecimal sum) {
        BigDecimal products = BigDecimal.ZERO;
        for (int i = 1; i < deviations.size(); i++) {
            products = products.add(deviations.get(i - 1).multiply(deviations.get(i)));
        }
        BigDecimal bothSums = sum.add(sum).subtract(deviations.get(0)).subtract(deviations.get(deviations.size() - 1));
        return count.multiply(count)
                .multiply(products)
                .subtract(count.multiply(sum).multiply(bothSums))
                .add(count.subtract(BigDecimal.ONE).multiply(sum).multiply(sum));
    }
}
