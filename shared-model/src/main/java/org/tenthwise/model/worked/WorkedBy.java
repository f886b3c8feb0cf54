package org.tenthwise.model.worked;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.Limit;

/**
 * A way of working a size or an angle out of what is read at a place.
 *
 * <p>What is done with each in its own way is a {@link Cases}, so that a new one does not compile until it is named.
 */
public sealed interface WorkedBy
        permits BallsInTaper,
                BetweenCentres,
                ChordAndHeight,
                KeywayDepth,
                OnSineBar,
                OverTeethSpan,
                PinInVee,
                PinsInDovetail,
                PinsInTeeth,
                RollersOnTaper,
                RollsAtArc,
                TwoDiameters {

    /** How far a reading is moved to see how far the result moves: a hundredth of a millimetre either way. */
    Length MOVED = Length.of("0.01", Unit.MILLIMETRE);

    /** Angles are worked out to a thousandth of a second. */
    int PLACES_OF_A_SECOND = 3;

    WorkedWay way();

    /** What is read at a place, one after the other. */
    List<WorkedReading> readings();

    /** What is known beforehand; what is of certified size by the figure of its certificate. */
    List<Given> given();

    /** What comes out. */
    default QuantityKind gives() {
        return QuantityKind.LENGTH;
    }

    /**
     * What the readings of a place come to.
     *
     * @param readings as many as are asked for, in that order
     * @throws IllegalArgumentException if no such work could be read so: contact off the flanks, no room, the wrong way
     *     round
     */
    Length of(List<Length> readings);

    /** What would be read of work of that size; absent where more than one reading makes it. */
    default Optional<Length> reading(Length size) {
        return Optional.empty();
    }

    /** Something that is told beside the result and not judged; absent where there is nothing. */
    default Optional<Length> beside(List<Length> readings) {
        return Optional.empty();
    }

    /**
     * The limit of the result beyond which there is metal left on the work; absent where the result does not tell, as
     * either of its sides can have been cut too much.
     */
    default Optional<Limit> metalBeyond() {
        return Optional.empty();
    }

    <R> R match(Cases<R> cases);

    /**
     * How far the result moves for each unit of one of the readings: lengths for each length, seconds of arc for each
     * millimetre. Absent where the work could not be read a hundredth of a millimetre off.
     */
    default Optional<BigDecimal> sensitivity(List<Length> readings, int which) {
        try {
            BigDecimal moved = of(with(readings, which, readings.get(which).plus(MOVED)))
                    .minus(of(with(readings, which, readings.get(which).minus(MOVED))))
                    .base();
            return Optional.of(moved.divide(MOVED.plus(MOVED).base(), PLACES_OF_A_SECOND + 1, RoundingMode.HALF_EVEN));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static List<Length> with(List<Length> readings, int which, Length other) {
        List<Length> all = new ArrayList<>(readings);
        all.set(which, other);
        return all;
    }

    /** An angle that a formula gave in degrees. */
    static Length angle(double degrees) {
        BigDecimal seconds = Length.of(BigDecimal.valueOf(degrees), Unit.DEGREE).in(Unit.SECOND_OF_ARC);
        return Length.of(seconds.setScale(PLACES_OF_A_SECOND, RoundingMode.HALF_EVEN), Unit.SECOND_OF_ARC);
    }

    /** Something for each of them. */
    interface Cases<R> {

        R twoDiameters(TwoDiameters by);

        R sineBar(OnSineBar by);

        R rollersOnTaper(RollersOnTaper by);

        R ballsInTaper(BallsInTaper by);

        R chord(ChordAndHeight by);

        R rollsAtArc(RollsAtArc by);

        R dovetail(PinsInDovetail by);

        R keyway(KeywayDepth by);

        R vee(PinInVee by);

        R pinsInTeeth(PinsInTeeth by);

        R span(OverTeethSpan by);

        R centres(BetweenCentres by);
    }
}
