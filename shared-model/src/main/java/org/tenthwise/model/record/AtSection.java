package org.tenthwise.model.record;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.compute.roundness.CircleFit;
import org.tenthwise.model.compute.roundness.UnfitAngles;
import org.tenthwise.model.plan.Section;
import org.tenthwise.model.quantity.Length;

/**
 * The run-out at one section of the part. Only figures of one gauge stand beside each other: those of two differ by
 * nothing that is of the work, so that of a sweep, and of the readings by angle, those count that the last gauge gave.
 *
 * @param section absent where the plan names none
 * @param swept highest and lowest over a full turn, as far as they are read
 * @param byAngle readings by angle, as far as they are taken, in the order of the angles
 * @param sweptMovement highest less lowest; absent until both are read
 * @param pointsMovement greatest less least reading by angle so far; absent under two
 * @param fit the circle fitted to a full set of readings by angle; absent where one is missing, far off or refused
 * @param refusal why no circle was fitted to a full set
 */
public record AtSection(
        Optional<Section> section,
        List<Measured> swept,
        List<Measured> byAngle,
        Optional<Length> sweptMovement,
        Optional<Length> pointsMovement,
        Optional<CircleFit> fit,
        Optional<UnfitAngles> refusal) {

    private static final int FEWEST_THAT_SHOW_FORM = 4;

    public AtSection {
        swept = List.copyOf(swept);
        byAngle = List.copyOf(byAngle);
    }

    /** Whether highest and lowest of a full turn are both read. */
    public boolean isSwept() {
        return sweptMovement.isPresent();
    }

    /** The greatest movement read here, over a turn or by points; absent before there is one. */
    public Optional<Length> movement() {
        return Stream.of(sweptMovement, pointsMovement)
                .flatMap(Optional::stream)
                .reduce((one, other) -> one.isAbove(other) ? one : other);
    }

    /**
     * What a full turn may come to by the readings by angle: twice the eccentricity and what the circle leaves. A point
     * never sits just on the high side, so that this is more than they show. Absent without a circle, and from three
     * readings, which leave nothing over whatever the form of the work.
     */
    public Optional<Length> wholeTurn() {
        return fit.filter(circle -> byAngle.size() >= FEWEST_THAT_SHOW_FORM)
                .map(circle -> circle.eccentricRunOut().plus(circle.residual()));
    }
}
