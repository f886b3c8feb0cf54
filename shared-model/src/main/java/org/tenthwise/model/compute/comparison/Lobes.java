package org.tenthwise.model.compute.comparison;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import org.tenthwise.model.words.Refused;

/**
 * How much of an out-of-round an indicator shows over work that lies in a vee, or between two points.
 *
 * <p>Magnification = |1 + cos(n · (90° + v/2)) / sin(v/2)| for n lobes in a vee of the whole angle v, the indicator on
 * the line that halves the vee. Two points facing each other are the vee of 180°.
 *
 * <p>No unit: swing of the indicator for one unit of out-of-round. Its sign, which only says whether the indicator
 * rises or falls as a lobe comes under it, is left off.
 *
 * <p>Two points show even numbers of lobes twice and odd numbers not at all. Two lobes (an oval) in a vee of 60°, and
 * seven and nine in one of 90°, do not show. A gauge with three points a third of a turn apart is the vee of 60°.
 *
 * <p>Source: formula for the vee with the indicator at its summit, Journal of the Japan Society of Precision
 * Engineering 43 (514), 1977, p. 1167; ISO 4292 tabulates it for the usual vees.
 */
public final class Lobes {

    private static final BigDecimal RIGHT_ANGLE = BigDecimal.valueOf(90);
    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final BigDecimal FULL = BigDecimal.valueOf(360);
    private static final BigDecimal HALF = BigDecimal.valueOf(180);
    private static final double HARDLY_SEEN = 0.1;
    private static final int FEWEST = 2;
    private static final int MOST_USUAL = 9;

    private final BigDecimal halfVee;

    /** @throws IllegalArgumentException unless the vee is more than 0° and not more than 180° */
    public Lobes(BigDecimal veeDegrees) {
        if (veeDegrees.signum() <= 0 || veeDegrees.compareTo(HALF) > 0) {
            throw new Refused("model.lobes.v-angle", veeDegrees.toPlainString());
        }
        this.halfVee = veeDegrees.divide(TWO);
    }

    /** @throws IllegalArgumentException for fewer than two lobes, which are an eccentricity and no form */
    public double magnification(int lobes) {
        if (lobes < FEWEST) {
            throw new Refused("model.lobes.lobes-work", lobes);
        }
        BigDecimal phase =
                RIGHT_ANGLE.add(halfVee).multiply(BigDecimal.valueOf(lobes)).remainder(FULL);
        return Math.abs(
                1 + Math.cos(Math.toRadians(phase.doubleValue())) / Math.sin(Math.toRadians(halfVee.doubleValue())));
    }

    /** Whether less than a tenth of an out-of-round of so many lobes shows. */
    public boolean misses(int lobes) {
        return magnification(lobes) < HARDLY_SEEN;
    }

    /** Which of the usual numbers of lobes, two to nine, do not show. */
    public List<Integer> missed() {
        return IntStream.rangeClosed(FEWEST, MOST_USUAL)
                .filter(this::misses)
                .boxed()
                .toList();
    }
}
