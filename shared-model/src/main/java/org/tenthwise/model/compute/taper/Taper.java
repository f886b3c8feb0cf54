package org.tenthwise.model.compute.taper;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/**
 * A taper, in each of the ways it is written.
 *
 * <p>With h half the angle of the whole cone: taper = 2 tan h on diameter for each unit of length, twelve times that
 * for the foot, 1 in 1 / (2 tan h); h = atan(taper / 2). The half is taken before the arc tangent: 7 in 24 is 8.2971° a
 * side, and not half of atan(7/24).
 *
 * <p>Angles in degrees; the taper is a ratio of lengths without unit, on diameter, not on radius. More than zero
 * always: which end is the larger is not in it.
 *
 * <p>No taper (0°) and a flat face (180°) are refused: one has no length to 1 in, the other no taper.
 *
 * <p>Source: ISO 1119:1998 as adopted by GOST R 53440-2009, table 1, for ratios; taper per foot as in Machinery's
 * Handbook, 31st ed., p. 695.
 *
 * @param tangent of half the angle of the whole cone, more than zero
 */
public record Taper(double tangent) {

    private static final double INCHES_PER_FOOT = 12;
    private static final BigDecimal FLAT = BigDecimal.valueOf(180);
    private static final double HALF_TURN = 180;

    public Taper {
        if (!(tangent > 0) || !Double.isFinite(tangent)) {
            throw new Refused("model.taper.none");
        }
    }

    /** @param degrees of the whole cone, more than 0 and less than 180 */
    public static Taper ofIncluded(BigDecimal degrees) {
        if (degrees.signum() <= 0 || degrees.compareTo(FLAT) >= 0) {
            throw new Refused("model.taper.included");
        }
        return ofHalf(degrees.doubleValue() / 2);
    }

    /** @param degrees from the axis to the side, more than 0 and less than 90 */
    public static Taper ofHalf(BigDecimal degrees) {
        if (degrees.signum() <= 0 || degrees.add(degrees).compareTo(FLAT) >= 0) {
            throw new Refused("model.taper.half");
        }
        return ofHalf(degrees.doubleValue());
    }

    private static Taper ofHalf(double degrees) {
        return new Taper(Math.tan(Math.toRadians(degrees)));
    }

    /** @param diameters what the diameter changes by on {@code length}; both more than zero */
    public static Taper ofRatio(BigDecimal diameters, BigDecimal length) {
        if (diameters.signum() <= 0 || length.signum() <= 0) {
            throw new Refused("model.taper.none");
        }
        return new Taper(diameters.doubleValue() / length.doubleValue() / 2);
    }

    /** @param inches on diameter to the foot of length, more than zero */
    public static Taper ofPerFoot(BigDecimal inches) {
        return ofRatio(inches, BigDecimal.valueOf(INCHES_PER_FOOT));
    }

    /** @param taper on diameter for each unit of length, more than zero */
    public static Taper ofPerUnit(BigDecimal taper) {
        return ofRatio(taper, BigDecimal.ONE);
    }

    /** @param length along the axis from one diameter to the other, more than zero */
    public static Taper ofDiameters(Length large, Length small, Length length) {
        if (!large.isAbove(small)) {
            throw new Refused("model.taper.diameters");
        }
        return ofRatio(large.minus(small).millimetres(), length.millimetres());
    }

    /** Degrees from the axis to the side. */
    public double half() {
        return Math.atan(tangent) * HALF_TURN / Math.PI;
    }

    /** Degrees of the whole cone. */
    public double included() {
        return 2 * half();
    }

    /** On diameter for each unit of length. */
    public double perUnit() {
        return 2 * tangent;
    }

    /** Inches on diameter to the foot. */
    public double perFoot() {
        return INCHES_PER_FOOT * perUnit();
    }

    /** The length on which the diameter changes by one. */
    public double oneIn() {
        return 1 / perUnit();
    }
}
