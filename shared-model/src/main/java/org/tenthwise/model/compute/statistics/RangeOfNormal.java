package org.tenthwise.model.compute.statistics;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Mean and standard deviation of the range of n normal readings, in standard deviations of one reading.
 *
 * <p>P(R ≤ w) = n ∫ φ(x) (Φ(x + w) − Φ(x))<sup>n−1</sup> dx; d2 = ∫ P(R &gt; w) dw; d3² = 2 ∫ w P(R &gt; w) dw − d2².
 *
 * <p>Plain numbers, right to eleven figures.
 *
 * <p>From 2 to 100 readings: d2(2) = 2/√π, d2(3) = 3/√π, d3(2) = √(2 − 4/π).
 *
 * <p>Source: L. H. C. Tippett, Biometrika 17 (1925) 364; the factors of ASTM E2587 and ISO 7870-2 are these to three
 * places. Integrated and not copied from a table, because printed tables differ in the last place.
 */
final class RangeOfNormal {

    static final int MOST = 100;

    private static final double FARTHEST = 9;
    private static final double WIDEST = 15;
    private static final double WIDTH_OF_A_PANEL = 0.5;
    private static final double[][] MOMENTS = moments();

    private RangeOfNormal() {}

    static double d2(int n) {
        return MOMENTS[0][n];
    }

    static double d3(int n) {
        return Math.sqrt(MOMENTS[1][n] - d2(n) * d2(n));
    }

    /**
     * √(d2² + d3² / groups): what one over turns a mean range of that many groups into a standard deviation without
     * bias in its square.
     */
    static double d2Star(int n, int groups) {
        return Math.sqrt(d2(n) * d2(n) + d3(n) * d3(n) / groups);
    }

    /** First and second moment of the range, for every number of readings at once. */
    private static double[][] moments() {
        double[][] moments = new double[2][MOST + 1];
        int panels = (int) (WIDEST / WIDTH_OF_A_PANEL);
        Panels.each(0, WIDEST, panels, (w, weight) -> {
            double[] notWider = notWider(w);
            for (int n = 2; n <= MOST; n++) {
                moments[0][n] += weight * (1 - notWider[n]);
                moments[1][n] += weight * 2 * w * (1 - notWider[n]);
            }
        });
        return moments;
    }

    /** P(R ≤ w) for each number of readings. */
    private static double[] notWider(double w) {
        NormalDistribution normal = NormalDistribution.of(0, 1);
        double[] probabilities = new double[MOST + 1];
        int panels = (int) (2 * FARTHEST / WIDTH_OF_A_PANEL);
        Panels.each(-FARTHEST, FARTHEST, panels, (x, weight) -> {
            double between = normal.probability(x, x + w);
            double power = weight * normal.density(x);
            for (int n = 2; n <= MOST; n++) {
                power *= between;
                probabilities[n] += n * power;
            }
        });
        return probabilities;
    }
}
