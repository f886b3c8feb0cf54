package org.tenthwise.model.compute.statistics;

import java.math.BigDecimal;
import java.util.List;
import org.tenthwise.model.words.Refused;

/**
 * What is known of the parts that were measured: how many, their mean and their standard deviation (n − 1 in the
 * divisor).
 *
 * @param n two or more
 * @param sd more than zero: readings that are all alike say that the gauge is too coarse, not that there is no spread
 */
public record Sample(int n, BigDecimal mean, BigDecimal sd) {

    public Sample {
        if (n < 2) {
            throw new Refused("model.sample.n-spread", n);
        }
        if (sd.signum() <= 0) {
            throw new Refused("model.sample.standard-deviation", n, sd.toPlainString());
        }
    }

    /** @throws IllegalArgumentException for fewer than two readings, and for readings all alike */
    public static Sample of(List<BigDecimal> readings) {
        return of(Summary.of(readings));
    }

    /** @throws IllegalArgumentException for fewer than two readings, and for readings all alike */
    public static Sample of(Summary summary) {
        return new Sample(summary.n(), summary.mean(), summary.sd().orElse(BigDecimal.ZERO));
    }

    /** How many standard deviations {@code figure} stands above the mean; below zero under it. */
    double standardDeviationsTo(BigDecimal figure) {
        return figure.subtract(mean).doubleValue() / sd.doubleValue();
    }
}
