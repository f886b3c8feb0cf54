package org.tenthwise.model.compute.statistics;

import java.math.BigDecimal;
import java.util.List;
import org.tenthwise.model.words.Refused;

/**
 * Whether the reading furthest from the mean lies further out than chance would put it.
 *
 * <p>G = max |x − mean| / s; critical value = (n − 1)/√n · √(t² / (n − 2 + t²)), t the quantile of Student's
 * distribution with n − 2 degrees of freedom exceeded with α/(2n) where either end was in question, with α/n where only
 * one was.
 *
 * <p>Plain numbers. The reading is outlying where G is above the critical value; it is flagged, never dropped.
 *
 * <p>Needs three readings, not all alike. G cannot be above (n − 1)/√n: of three readings one five s off is found one
 * time in twelve. Two that lie out on one side hide each other.
 *
 * <p>Source: F. E. Grubbs, Technometrics 11 (1969) 1; NIST/SEMATECH e-Handbook 1.3.5.17.1; ASTM E178. Worked out and
 * not read from a table: printed tables have errors.
 *
 * @param place of the reading in the list, counted from 1; the first of several equally far out
 */
public record Grubbs(double g, double critical, int place, boolean outlying) {

    /** Fewest readings the test says anything about. */
    public static final int FEWEST = 3;

    /**
     * @param sides 2 if either end was in question, 1 if only the end the reading lies at
     * @param alpha how often to cry wolf over good readings, between 0 and 1
     * @throws IllegalArgumentException for fewer than three readings, and for readings all alike
     */
    public static Grubbs of(List<BigDecimal> readings, int sides, double alpha) {
        if (readings.size() < FEWEST) {
            throw new Refused("model.grubbs.readings-among", readings.size());
        }
        Sample sample = Sample.of(readings);
        double sd = sample.sd().doubleValue();
        int furthest = 0;
        double g = -1;
        for (int i = 0; i < readings.size(); i++) {
            double out = Math.abs(readings.get(i).subtract(sample.mean()).doubleValue() / sd);
            if (out > g) {
                g = out;
                furthest = i;
            }
        }
        double critical = critical(readings.size(), sides, alpha);
        return new Grubbs(g, critical, furthest + 1, g > critical);
    }

    /** @throws IllegalArgumentException for n below three, sides other than 1 and 2, alpha not between 0 and 1 */
    public static double critical(int n, int sides, double alpha) {
        if (n < FEWEST || sides < 1 || sides > 2) {
            throw new Refused("model.grubbs.critical-value", n, sides);
        }
        Share.check("alpha", alpha);
        double t = Quantile.ofStudent(n - 2.0, alpha / sides / n);
        return (n - 1) / Math.sqrt(n) / Math.sqrt((n - 2) / (t * t) + 1);
    }
}
