package org.tenthwise.model.compute.thread.limits;

import static org.tenthwise.model.compute.thread.limits.Rounded.inch;

import java.math.BigDecimal;

/**
 * Limits of the minor diameter of unified nuts.
 *
 * <p>Least: D − 1.08253175 P. Tolerance: for 1B and 2B from 1/4 in on 0.25 P − 0.4 P², with fewer than four threads to
 * the inch 0.15 P; below 1/4 in, and for 3B in all sizes, 0.05 ∛P² + 0.03 P/D − 0.002, but not more than 0.394 P, and
 * not less than 0.25 P − 0.4 P² for 1B and 2B, 0.23 P − 1.5 P² for 3B with 13 threads to the inch and more, 0.12 P with
 * fewer.
 *
 * <p>Inches. Sizes below 0.138 (number 6) to four places. From there on 1B and 2B to three places, rounded from four;
 * 3B the least to three, the greatest to four.
 *
 * <p>Source: ASME B1.1, formulas of the minor diameter; ASME B1.30, 3.1.3 for the three places. Rounding twice is what
 * the printed tables have: 1 3/4-5 UNC-2B is 1.534 to 1.568, though the unrounded figures are 1.53349 and 1.56749.
 */
record UnifiedNutBore(BigDecimal greatest, BigDecimal least) {

    private static final int PLACES_OF_A_LARGE_BORE = 3;
    private static final BigDecimal DEPTH_OF_THREAD = new BigDecimal("1.082531754731");
    private static final BigDecimal NUMBER_SIX = new BigDecimal("0.138");
    private static final double QUARTER_INCH = 0.25;

    static UnifiedNutBore of(BigDecimal diameter, BigDecimal pitch, int number) {
        BigDecimal least = inch(diameter.subtract(DEPTH_OF_THREAD.multiply(pitch)));
        double tolerance = number == 3
                ? close(diameter.doubleValue(), pitch.doubleValue())
                : usual(diameter.doubleValue(), pitch.doubleValue());
        BigDecimal greatest = least.add(Rounded.to(Rounded.PLACES_OF_AN_INCH, tolerance));
        if (diameter.compareTo(NUMBER_SIX) < 0) {
            return new UnifiedNutBore(greatest, least);
        }
        return new UnifiedNutBore(
                number == 3 ? greatest : Rounded.to(PLACES_OF_A_LARGE_BORE, greatest),
                Rounded.to(PLACES_OF_A_LARGE_BORE, least));
    }

    private static double usual(double diameter, double pitch) {
        double byPitch = 0.25 * pitch - 0.4 * pitch * pitch;
        if (diameter < QUARTER_INCH) {
            return Math.max(byDiameter(diameter, pitch), byPitch);
        }
        return threads(pitch) >= 4 ? byPitch : 0.15 * pitch;
    }

    private static double close(double diameter, double pitch) {
        return Math.max(
                byDiameter(diameter, pitch), threads(pitch) >= 13 ? 0.23 * pitch - 1.5 * pitch * pitch : 0.120 * pitch);
    }

    private static double byDiameter(double diameter, double pitch) {
        return Math.min(0.05 * UnifiedLimits.rootOfSquare(pitch) + 0.03 * pitch / diameter - 0.002, 0.394 * pitch);
    }

    /** Threads to the inch, with what the division left taken away. */
    private static double threads(double pitch) {
        return Rounded.to(6, 1 / pitch).doubleValue();
    }
}
