package org.tenthwise.model.compute.statistics;

import java.util.OptionalDouble;
import org.tenthwise.model.words.Refused;

/**
 * Where the spread of a gauge study comes from.
 *
 * <p>gauge² = repeatability² + reproducibility²; total² = gauge² + part²; percent of total = 100 gauge / total; percent
 * of tolerance = 600 gauge / T; distinct = 1.41 part / gauge.
 *
 * <p>Standard deviations in the unit of the readings.
 *
 * <p>No spread at all has no percentage; a gauge without spread tells any number of parts apart, so there is no number.
 *
 * <p>Source: Measurement Systems Analysis reference manual, 4th ed., ch. III. The number of parts told apart is not cut
 * to a whole one: on the same readings one method gives 5.09 and the other 4.86.
 *
 * @param reproducibility between persons, with what persons and parts have between them if that is kept
 * @param interaction what became of it
 * @param cutAtZero a variance came out below zero and counts as zero
 */
public record GaugeStudy(
        double repeatability, double reproducibility, double part, Interaction interaction, boolean cutAtZero) {

    private static final double DISTINCT = 1.41;
    private static final double WIDTH = 6;

    /** Whether some persons read some parts differently. */
    public enum Interaction {

        /** The method cannot tell, or there is one person. */
        NOT_SOUGHT,

        /** Not significant: counted with the repeatability. */
        POOLED,

        /** Significant: counted with the reproducibility. */
        KEPT
    }

    public double gauge() {
        return Math.hypot(repeatability, reproducibility);
    }

    public double total() {
        return Math.hypot(gauge(), part);
    }

    /** Of the total spread; hangs on which parts were chosen. */
    public OptionalDouble percentOfTotal() {
        return total() == 0 ? OptionalDouble.empty() : OptionalDouble.of(100 * gauge() / total());
    }

    /** @param tolerance the whole of it, more than zero */
    public double percentOfTolerance(double tolerance) {
        if (!(tolerance > 0)) {
            throw new Refused("model.gauge-study.tolerance-more");
        }
        return 100 * WIDTH * gauge() / tolerance;
    }

    /** How many groups of parts the gauge tells apart. */
    public OptionalDouble distinct() {
        return gauge() == 0 ? OptionalDouble.empty() : OptionalDouble.of(DISTINCT * part / gauge());
    }
}
