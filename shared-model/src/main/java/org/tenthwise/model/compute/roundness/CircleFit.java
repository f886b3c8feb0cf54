package org.tenthwise.model.compute.roundness;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.tenthwise.model.compute.equations.ThreeUnknowns;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Refused;

/**
 * The circle that fits the readings round one turn best, and so how far off centre the work sits, and to which side.
 *
 * <p>Reading at angle t = mean + cosPart · cos t + sinPart · sin t + what is left over, with the sum of the squares of
 * what is left over as small as can be. Equal and unequal angles alike are solved by the three normal equations.
 *
 * <p>Lengths to 1 nm in the sense of the readings: a reading grows where the surface stands further out. The
 * eccentricity is zero or more and lies towards {@code highAtDegrees}.
 *
 * <p>Three readings are always fitted exactly: nothing is left over, and the form of the work is not known. Equal
 * readings give no eccentricity, with {@code highAtDegrees} zero.
 *
 * <p>Source: least-squares reference circle, ISO 12181-1 and C. P. Reeve, NBSIR 79-1758; the linear form holds while
 * the eccentricity is small beside the radius of the work. The formula for equal spacing (2/N times the sums with sine
 * and cosine) is this one where the angles are equally spaced, and wrong elsewhere, so only this one is used.
 *
 * @param mean the reading the fitted circle would give if it ran true
 * @param cosPart part of the eccentricity towards 0°
 * @param sinPart part of the eccentricity towards 90°
 * @param eccentricRunOut twice the eccentricity: the swing an indicator would show on perfectly round work set this far
 *     off centre
 * @param highAtDegrees where the fitted circle stands furthest out, from 0 to less than 360, to 1e-6 degree
 * @param residual greatest less least of what is left over, before rounding: what no moving of the work takes away
 * @param leftOver reading less fitted circle, one for each reading, in their order
 */
public record CircleFit(
        Length mean,
        Length cosPart,
        Length sinPart,
        Length eccentricity,
        Length eccentricRunOut,
        BigDecimal highAtDegrees,
        Length residual,
        List<Length> leftOver) {

    public CircleFit {
        leftOver = List.copyOf(leftOver);
    }

    /** Why there is no fit for readings at these angles; absent if there is one. */
    public static Optional<UnfitAngles> refusal(List<BigDecimal> anglesDegrees) {
        TreeSet<BigDecimal> directions = new TreeSet<>();
        anglesDegrees.forEach(angle -> directions.add(Angle.inOneTurn(angle)));
        if (directions.size() < 3) {
            return Optional.of(UnfitAngles.FEWER_THAN_THREE_ANGLES);
        }
        BigDecimal before = directions.last().subtract(Angle.FULL_TURN);
        for (BigDecimal direction : directions) {
            if (direction.subtract(before).compareTo(Angle.HALF_TURN) >= 0) {
                return Optional.of(UnfitAngles.GAP_OF_HALF_A_TURN);
            }
            before = direction;
        }
        return Optional.empty();
    }

    /**
     * @param anglesDegrees where each reading was taken; any turn, any order, the same direction twice if need be
     * @throws IllegalArgumentException if the angles are refused or their number is not that of the readings
     */
    public static CircleFit of(List<BigDecimal> anglesDegrees, List<Length> readings) {
        if (anglesDegrees.size() != readings.size()) {
            throw new Refused("model.circle-fit.angles-do", anglesDegrees.size(), readings.size());
        }
        refusal(anglesDegrees).ifPresent(refusal -> {
            throw new IllegalArgumentException("No circle can be fitted at %s: %s".formatted(anglesDegrees, refusal));
        });
        Length base = readings.get(0);
        double[] angles = anglesDegrees.stream().mapToDouble(Angle::radians).toArray();
        double[] heights = readings.stream()
                .mapToDouble(reading -> Nanometres.of(reading.minus(base)))
                .toArray();
        double[] fitted = leastSquares(angles, heights);
        double[] leftOver = new double[angles.length];
        for (int i = 0; i < angles.length; i++) {
            leftOver[i] = heights[i] - fitted[0] - fitted[1] * Math.cos(angles[i]) - fitted[2] * Math.sin(angles[i]);
        }
        double offCentre = Math.hypot(fitted[1], fitted[2]);
        Length eccentricity = Nanometres.round(offCentre);
        BigDecimal highAt = eccentricity.signum() == 0 ? BigDecimal.ZERO : Eccentricity.direction(fitted[1], fitted[2]);
        return new CircleFit(
                base.plus(Nanometres.round(fitted[0])),
                Nanometres.round(fitted[1]),
                Nanometres.round(fitted[2]),
                eccentricity,
                Nanometres.round(2 * offCentre),
                highAt,
                movement(leftOver),
                Arrays.stream(leftOver).mapToObj(Nanometres::round).toList());
    }

    /** The eccentricity with its side. */
    public Eccentricity centre() {
        return new Eccentricity(cosPart, sinPart);
    }

    private static Length movement(double[] heights) {
        DoubleSummaryStatistics range = Arrays.stream(heights).summaryStatistics();
        return Nanometres.round(range.getMax() - range.getMin());
    }

    /**
     * Mean, cosine part and sine part. Heights are counted from one of them, so they lose nothing as {@code double}.
     */
    private static double[] leastSquares(double[] angles, double[] heights) {
        double[][] normal = new double[3][3];
        double[] right = new double[3];
        for (int i = 0; i < angles.length; i++) {
            double[] terms = {1, Math.cos(angles[i]), Math.sin(angles[i])};
            for (int row = 0; row < 3; row++) {
                right[row] += terms[row] * heights[i];
                for (int column = 0; column < 3; column++) {
                    normal[row][column] += terms[row] * terms[column];
                }
            }
        }
        return ThreeUnknowns.solve(normal, right);
    }
}
