package org.tenthwise.model.compute.uncertainty;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Refused;

/**
 * How likely it is that a measured size lies within its limits in truth.
 *
 * <p>Φ((upper − size) / u) − Φ((lower − size) / u), u being the standard uncertainty of the size and Φ the normal
 * distribution; a limit that is not there leaves its term at 1 or 0.
 *
 * <p>No unit; from 0 to 1.
 *
 * <p>A size on the only limit has one half, on one of two wide limits nearly so. It says nothing about a verdict: that
 * comes from {@link org.tenthwise.model.verdict.Judge}, which is exact.
 *
 * <p>Source: JCGM 106:2012, 7.3 (one limit) and 7.4 (two), for a normal distribution and no knowledge but the
 * measurement.
 */
public final class Conformance {

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    private Conformance() {}

    /** @throws IllegalArgumentException unless {@code standardUncertainty} is more than zero */
    public static double probability(Limits limits, Length size, Length standardUncertainty) {
        if (standardUncertainty.signum() <= 0) {
            throw new Refused("model.conformance.standard-uncertainty", standardUncertainty);
        }
        double lower = limits.lower()
                .map(limit -> steps(limit.length(), size, standardUncertainty))
                .orElse(Double.NEGATIVE_INFINITY);
        double upper = limits.upper()
                .map(limit -> steps(limit.length(), size, standardUncertainty))
                .orElse(Double.POSITIVE_INFINITY);
        return lower == upper ? 0 : NORMAL.probability(lower, upper);
    }

    private static double steps(Length limit, Length size, Length standardUncertainty) {
        return Nanometres.of(limit.minus(size)) / Nanometres.of(standardUncertainty);
    }
}
