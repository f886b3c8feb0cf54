package org.tenthwise.model.compute.uncertainty;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * By how much a standard uncertainty is multiplied to cover the result with about 95 %.
 *
 * <p>Ten effective degrees of freedom ν or fewer: the t factor for 95.45 % and ν cut down to a whole number. Otherwise,
 * one rectangle against which the rest is 0.3 or less: 0.95 · √3 = 1.65. Two rectangles of half-widths a and b against
 * which the rest is 0.3 or less make a trapezium: with β = |a − b| / (a + b), (1 − √(0.05 (1 − β²))) / √((1 + β²)/6),
 * between 1.65 and 1.90. Anything else: 2.
 *
 * <p>No unit; 1.65 to 13.97.
 *
 * <p>No scatter of one's own, or one found from many readings, leaves 2. Zero as a whole has 2 as well.
 *
 * <p>Source: JCGM 100:2008 (GUM), G.6.6 (2 where several sources count and ν is more than 10) and G.4.1, G.6.4 (t, ν
 * cut to a whole number); EA-4/02, supplement 2, S9.14 (one rectangle) and S10.13 (two). Two is what shop budgets
 * print; the others are chosen only where those clauses say that two is wrong, and {@link #rule()} says which was.
 *
 * @param factor more than zero
 */
public record Coverage(double factor, Rule rule) {

    /** Why the factor is what it is. */
    public enum Rule {
        /** Several sources, known well enough. */
        USUAL_TWO,
        /** The scatter comes from so few readings that it is not well known. */
        FEW_READINGS,
        /** One rectangle outweighs the rest. */
        ONE_RECTANGLE,
        /** Two rectangles together outweigh the rest. */
        TWO_RECTANGLES
    }

    private static final double ENOUGH_DEGREES_OF_FREEDOM = 10;
    private static final double OUTSIDE_TWO_SIGMA = 1 - 0.9545;
    private static final double COVERED = 0.95;
    private static final double STILL_OUTWEIGHED = 0.3;

    static Coverage of(List<Component> components, double standard, OptionalDouble effective) {
        if (standard == 0) {
            return new Coverage(2, Rule.USUAL_TWO);
        }
        if (effective.isPresent() && effective.getAsDouble() <= ENOUGH_DEGREES_OF_FREEDOM) {
            return new Coverage(studentFactor(effective.getAsDouble()), Rule.FEW_READINGS);
        }
        double[] rectangles = components.stream()
                .filter(Component::rectangle)
                .map(Component::standard)
                .sorted(Comparator.reverseOrder())
                .limit(2)
                .mapToDouble(Double::doubleValue)
                .toArray();
        if (rectangles.length > 0 && outweighs(rectangles[0], standard)) {
            return new Coverage(COVERED * Math.sqrt(3), Rule.ONE_RECTANGLE);
        }
        if (rectangles.length > 1 && outweighs(Math.hypot(rectangles[0], rectangles[1]), standard)) {
            return new Coverage(trapeziumFactor(rectangles[0], rectangles[1]), Rule.TWO_RECTANGLES);
        }
        return new Coverage(2, Rule.USUAL_TWO);
    }

    /**
     * The factor of Student's distribution that leaves 2.275 % on each side; degrees of freedom of less than one count
     * as one.
     */
    static double studentFactor(double degreesOfFreedom) {
        return TDistribution.of(Math.max(1, Math.floor(degreesOfFreedom)))
                .inverseSurvivalProbability(OUTSIDE_TWO_SIGMA / 2);
    }

    private static boolean outweighs(double dominant, double whole) {
        double rest = Math.sqrt(Math.max(0, (whole - dominant) * (whole + dominant)));
        return rest <= STILL_OUTWEIGHED * dominant;
    }

    /** Half-widths are to one another as the standard uncertainties. */
    private static double trapeziumFactor(double larger, double smaller) {
        double edge = (larger - smaller) / (larger + smaller);
        return (1 - Math.sqrt((1 - COVERED) * (1 - edge * edge))) / Math.sqrt((1 + edge * edge) / 6);
    }
}
