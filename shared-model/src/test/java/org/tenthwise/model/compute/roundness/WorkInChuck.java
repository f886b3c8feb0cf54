package org.tenthwise.model.compute.roundness;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/**
 * Work in a chuck of four jaws, with an indicator on it, as a machine would show it. In millimetres and radians, round
 * the spindle.
 *
 * <p>Assumed: the work is stiff and straight, its axis a line p(z) = shift + z · tilt that turns with the spindle. A
 * jaw moves the whole work along its own line, without tilting it, and what it was moved it stays. A mallet turns the
 * work about the middle of the jaws, z = 0. What the needle shows is the surface under it: p(z) along the needle, three
 * lobes of its own in each section, half a last place of its own whim either way, and then the last place it is read
 * to. Anything of second order beside the radius of the work is left out.
 *
 * <p>Jaw 1 stands anywhere; the jaws are numbered one way round or the other; the needle stands in front or behind. The
 * work is turned until the place named lies under the needle, whichever way that is.
 */
final class WorkInChuck {

    static final double LAST_PLACE = 0.001;
    static final List<BigDecimal> PLACES =
            IntStream.range(0, 8).mapToObj(i -> BigDecimal.valueOf(45L * i)).toList();

    private final Random chance;
    private final double jawOne;
    private final int numberedTowards;
    private final double needle;
    private final double[] shift;
    private final double[] tilt;
    private final double[] lobes;
    private final double[] lobesAt;
    private final double zero;

    /**
     * @param around where jaw 1 stands, which way the jaws are numbered and where the needle is: nothing that may make
     *     a difference
     */
    WorkInChuck(Random chance, Random around, double greatestShift, double greatestTilt, double greatestLobes) {
        this.chance = chance;
        this.jawOne = around.nextDouble() * 2 * Math.PI;
        this.numberedTowards = around.nextBoolean() ? 1 : -1;
        this.needle = around.nextBoolean() ? 0 : Math.PI;
        this.shift = anyway(greatestShift);
        this.tilt = anyway(greatestTilt);
        this.lobes = new double[] {chance.nextDouble() * greatestLobes, chance.nextDouble() * greatestLobes};
        this.lobesAt = new double[] {chance.nextDouble() * 2 * Math.PI, chance.nextDouble() * 2 * Math.PI};
        this.zero = chance.nextDouble() - 0.5;
    }

    /** As the jaws see it: the side is counted from jaw 1 to jaw 2. */
    private double[] anyway(double greatest) {
        double much = greatest * chance.nextDouble();
        double side = angleOnWork(chance.nextDouble() * 360);
        return new double[] {much * Math.cos(side), much * Math.sin(side)};
    }

    private double angleOnWork(double degreesFromJawOne) {
        return jawOne + numberedTowards * Math.toRadians(degreesFromJawOne);
    }

    /** How far the axis stands off towards a place, counted from jaw 1 to jaw 2. */
    double off(double z, double degreesFromJawOne) {
        double side = angleOnWork(degreesFromJawOne);
        return (shift[0] + z * tilt[0]) * Math.cos(side) + (shift[1] + z * tilt[1]) * Math.sin(side);
    }

    /**
     * The spindle is turned until the place lies under the needle; then the surface stands so far out towards the
     * needle.
     */
    private double surface(int section, double z, double degreesFromJawOne) {
        double turnedBy = needle - angleOnWork(degreesFromJawOne);
        double x = shift[0] + z * tilt[0];
        double y = shift[1] + z * tilt[1];
        double turnedX = x * Math.cos(turnedBy) - y * Math.sin(turnedBy);
        double turnedY = x * Math.sin(turnedBy) + y * Math.cos(turnedBy);
        return turnedX * Math.cos(needle)
                + turnedY * Math.sin(needle)
                + lobes[section] * Math.cos(3 * Math.toRadians(degreesFromJawOne) - lobesAt[section]);
    }

    private Length read(double surface) {
        double shown = zero + surface + (chance.nextDouble() - 0.5) * LAST_PLACE;
        return Length.of(BigDecimal.valueOf(shown).setScale(3, RoundingMode.HALF_EVEN), Unit.MILLIMETRE);
    }

    Indicated read(int section, double z) {
        List<Length> points = PLACES.stream()
                .map(place -> read(surface(section, z, place.doubleValue())))
                .toList();
        double[] turn = turn(section, z);
        Length swept = read(turn[1]).minus(read(turn[0]));
        return new Indicated(
                FullIndicatorMovement.of(points),
                CircleFit.of(PLACES, points),
                Optional.of(swept),
                Length.of(BigDecimal.valueOf(2 * LAST_PLACE), Unit.MILLIMETRE));
    }

    /** Least and greatest over the full turn, degree by degree. */
    private double[] turn(int section, double z) {
        double towardsJawOne = off(z, 0);
        double towardsJawTwo = off(z, 90);
        double[] turn = {Double.MAX_VALUE, -Double.MAX_VALUE};
        for (int degrees = 0; degrees < 360; degrees++) {
            double angle = Math.toRadians(degrees);
            double surface = towardsJawOne * Math.cos(angle)
                    + towardsJawTwo * Math.sin(angle)
                    + lobes[section] * Math.cos(3 * angle - lobesAt[section]);
            turn[0] = Math.min(turn[0], surface);
            turn[1] = Math.max(turn[1], surface);
        }
        return turn;
    }

    /** What it really runs out. */
    double runOut(int section, double z) {
        double[] turn = turn(section, z);
        return turn[1] - turn[0];
    }

    /** A jaw goes in until the needle over it has fallen, about. */
    void tighten(int jaw, Length fall) {
        double side = angleOnWork(90.0 * (jaw - 1));
        double much = about(fall);
        shift[0] -= much * Math.cos(side);
        shift[1] -= much * Math.sin(side);
    }

    /** A mallet at z taps the high side, about, until the needle over it has fallen, about. */
    void tap(double z, Eccentricity from) {
        double side = aboutAt(from);
        double much = about(from.amount());
        tilt[0] -= much * Math.cos(side) / z;
        tilt[1] -= much * Math.sin(side) / z;
    }

    /** The whole work is pushed away from its high side, about, until the needle over it has fallen, about. */
    void slide(Eccentricity from) {
        double side = aboutAt(from);
        double much = about(from.amount());
        shift[0] -= much * Math.cos(side);
        shift[1] -= much * Math.sin(side);
    }

    /** Its face is packed, about, on the side to which it leans from one section to the other. */
    void pack(double near, double far, Eccentricity lean) {
        double side = aboutAt(lean);
        double much = about(lean.amount()) / (far - near);
        tilt[0] -= much * Math.cos(side);
        tilt[1] -= much * Math.sin(side);
    }

    private double aboutAt(Eccentricity from) {
        return angleOnWork(from.highAtDegrees().doubleValue() + 20 * (chance.nextDouble() - 0.5));
    }

    /** Up to a tenth too much or too little. */
    private double about(Length much) {
        return much.millimetres().doubleValue() * (0.9 + 0.2 * chance.nextDouble());
    }
}
