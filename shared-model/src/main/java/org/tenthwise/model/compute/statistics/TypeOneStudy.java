package org.tenthwise.model.compute.statistics;

import java.math.BigDecimal;
import org.tenthwise.model.words.Refused;

/**
 * Whether a gauge repeats, and reads true, on one master read many times.
 *
 * <p>Cg = share · T / (spread · s); Cgk = (share/2 · T − |mean − reference|) / (spread/2 · s); bias = mean − reference;
 * its t = bias / (s/√n). T is the whole tolerance.
 *
 * <p>Cg and Cgk are plain numbers, the usual demand is 1.33; the bias is in the unit of the readings, above zero where
 * the gauge reads large.
 *
 * <p>25 to 50 readings are usual. Readings all alike have no Cg: the gauge is too coarse.
 *
 * <p>Source: ISO 22514-7; share 0.2 and spread 6 are common practice. Some houses take 0.15, or a spread of 4: so both
 * are settings.
 */
public record TypeOneStudy(Sample sample, double cg, double cgk, BigDecimal bias, double tOfBias) {

    /** Readings a study should have. */
    public static final int USUAL_READINGS = 25;

    /**
     * @param tolerance more than zero
     * @param share of the tolerance the spread is set against, more than zero
     * @param spread how many standard deviations wide the spread counts, more than zero
     */
    public static TypeOneStudy of(
            Sample sample, BigDecimal reference, BigDecimal tolerance, double share, double spread) {
        if (tolerance.signum() <= 0 || !(share > 0) || !(spread > 0)) {
            throw new Refused("model.type-one-study.tolerance-share");
        }
        double tolerances = tolerance.divide(sample.sd(), Precision.WORKING).doubleValue();
        double off = -sample.standardDeviationsTo(reference);
        return new TypeOneStudy(
                sample,
                share * tolerances / spread,
                (share / 2 * tolerances - Math.abs(off)) / (spread / 2),
                sample.mean().subtract(reference),
                off * Math.sqrt(sample.n()));
    }
}
