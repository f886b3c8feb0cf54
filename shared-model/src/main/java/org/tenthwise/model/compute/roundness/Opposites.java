package org.tenthwise.model.compute.roundness;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.tenthwise.model.quantity.Length;

/**
 * What four readings at right angles say against each other.
 *
 * <p>Sums differ = |(first + third) − (second + fourth)|, counted on round the turn. Ovality = half of the same
 * difference with its sign, the first being the reading at the least angle: the diameter there less the diameter across
 * it, halved.
 *
 * <p>Exact. Ovality is more than zero where the work is thicker through the first reading.
 *
 * <p>Four equal readings, and any pure eccentricity, give zero for both: round work only moves from one of two opposite
 * readings to the other. Sums that differ more than the work can be oval mean a reading taken wrong.
 *
 * <p>Source: US Bureau of Reclamation, unit run-out worksheet for vertical shafts (north and south against east and
 * west). The difference of the sums is all that the fitted circle leaves over of four readings, so it sees an oval, but
 * neither three lobes nor four.
 */
public record Opposites(Length sumsDiffer, Length ovality) {

    private static final BigDecimal RIGHT_ANGLE = BigDecimal.valueOf(90);

    /** Absent unless there are four readings at four directions a right angle apart. */
    public static Optional<Opposites> of(List<BigDecimal> anglesDegrees, List<Length> readings) {
        if (anglesDegrees.size() != 4 || readings.size() != 4) {
            return Optional.empty();
        }
        TreeMap<BigDecimal, Length> round = new TreeMap<>();
        for (int i = 0; i < 4; i++) {
            round.put(Angle.inOneTurn(anglesDegrees.get(i)), readings.get(i));
        }
        List<Length> inOrder = List.copyOf(round.values());
        if (inOrder.size() != 4 || !rightAngles(List.copyOf(round.keySet()))) {
            return Optional.empty();
        }
        Length difference =
                inOrder.get(0).plus(inOrder.get(2)).minus(inOrder.get(1)).minus(inOrder.get(3));
        return Optional.of(new Opposites(difference.abs(), difference.half()));
    }

    private static boolean rightAngles(List<BigDecimal> rising) {
        return rising.get(1).subtract(rising.get(0)).compareTo(RIGHT_ANGLE) == 0
                && rising.get(2).subtract(rising.get(1)).compareTo(RIGHT_ANGLE) == 0
                && rising.get(3).subtract(rising.get(2)).compareTo(RIGHT_ANGLE) == 0;
    }
}
