package org.tenthwise.model.compute.thread.limits;

import static org.tenthwise.model.compute.thread.limits.Rounded.inch;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ThreadClass;
import org.tenthwise.model.thread.ThreadDesignation;
import org.tenthwise.model.thread.ThreadSeries;
import org.tenthwise.model.thread.ThreadSide;

/**
 * Limits of size of unified threads.
 *
 * <p>With D the basic major diameter, P the pitch, LE the length of engagement: T2 = 0.0015 ∛D + 0.0015 √LE + 0.015
 * ∛P². Tolerance of the pitch diameter: T2 times 1.5 (1A), 1 (2A), 0.75 (3A), 1.95 (1B), 1.3 (2B), 0.975 (3B).
 * Allowance of 1A and 2A: 0.3 T2. Tolerance of the external major diameter: 0.06 ∛P², for 1A 0.09 ∛P². Basic pitch
 * diameter D − 0.64951905 P. Greatest minor diameter of a screw with rounded root, for reference: greatest major −
 * 1.19078493 P. The minor diameter of the nut: {@link UnifiedNutBore}.
 *
 * <p>Inches to four places; each piece is rounded before they are put together, T2 to six places, and the allowance
 * from T2 rounded to five.
 *
 * <p>A diameter and pitch that ASME B1.1 does not list give a proposal, as for a special thread with LE = 9 P. Class 1A
 * and 1B are listed for UNC and UNF from 1/4 in on. Several starts are taken by their pitch.
 *
 * <p>Source: ASME B1.1, formulas of the tolerances and the allowance; rounding ASME B1.30. LE = D for UNC, UNF and the
 * series of 4, 6 and 8 threads to the inch, 9 P for the others. Pieces rounded one by one give the printed limits;
 * adding first does not. Five places of T2 under the allowance are what gives every printed one: from the unrounded T2
 * 5/8-11 UNC-2A would have 0.0017 and not 0.0016, from four places 1 1/4-12 UNF-2A 0.0019 and not 0.0018.
 */
final class UnifiedLimits {

    private static final int PLACES_OF_THE_TOLERANCE = 6;
    private static final int PLACES_UNDER_THE_ALLOWANCE = 5;
    private static final BigDecimal PITCH_LINE = new BigDecimal("0.649519052838");
    private static final BigDecimal ROUNDED_ROOT = new BigDecimal("1.190784930203");
    private static final BigDecimal ALLOWANCE = new BigDecimal("0.3");
    private static final BigDecimal QUARTER_INCH = new BigDecimal("0.25");
    private static final int COARSEST_SERIES = 8;

    private final BigDecimal diameter;
    private final BigDecimal pitch;
    private final ThreadClass threadClass;
    private final LimitsBuilder drafted = new LimitsBuilder(Unit.INCH);
    private final BigDecimal engagedTolerance;

    UnifiedLimits(ThreadDesignation designation) {
        this.diameter = designation.thread().diameter().in(Unit.INCH);
        this.pitch = designation.thread().pitch().in(Unit.INCH);
        this.threadClass = designation.threadClass();
        Optional<String> series = ThreadSeries.ofUnified(designation.thread());
        boolean graded = series.filter(List.of("UNC", "UNF")::contains).isPresent();
        boolean coarse = series.filter("UN"::equals).isPresent()
                && designation.thread().threadsToTheInch().compareTo(BigDecimal.valueOf(COARSEST_SERIES)) <= 0;
        boolean oneDiameter = graded || coarse;
        this.engagedTolerance = tolerance(oneDiameter ? diameter : pitch.multiply(BigDecimal.valueOf(9)));
        drafted.remark(series.isEmpty(), LimitsRemark.NOT_IN_SERIES)
                .remark(
                        threadClass.pitchGrade() == 1 && !(graded && diameter.compareTo(QUARTER_INCH) >= 0),
                        LimitsRemark.CLASS_NOT_LISTED)
                .remark(designation.thread().starts() > 1, LimitsRemark.AS_FOR_ONE_START)
                .remark(oneDiameter, LimitsRemark.ENGAGED_ONE_DIAMETER)
                .remark(!oneDiameter, LimitsRemark.ENGAGED_NINE_PITCHES);
    }

    ThreadLimits on(ThreadSide side) {
        BigDecimal basicPitch = inch(diameter.subtract(PITCH_LINE.multiply(pitch)));
        BigDecimal tolerance = inch(engagedTolerance.multiply(new BigDecimal(shareOfTolerance())));
        return side == ThreadSide.EXTERNAL ? external(basicPitch, tolerance) : internal(basicPitch, tolerance);
    }

    private ThreadLimits external(BigDecimal basicPitch, BigDecimal tolerance) {
        BigDecimal allowance = threadClass.pitchGrade() == 3
                ? BigDecimal.ZERO
                : inch(engagedTolerance
                        .setScale(PLACES_UNDER_THE_ALLOWANCE, RoundingMode.HALF_EVEN)
                        .multiply(ALLOWANCE));
        BigDecimal major = inch(diameter.subtract(allowance));
        double share = threadClass.pitchGrade() == 1 ? 0.090 : 0.060;
        BigDecimal majorTolerance = Rounded.to(Rounded.PLACES_OF_AN_INCH, share * rootOfSquare(pitch.doubleValue()));
        BigDecimal pitchMax = basicPitch.subtract(allowance);
        return drafted.major(major, major.subtract(majorTolerance))
                .minorGreatest(inch(major.subtract(ROUNDED_ROOT.multiply(pitch))))
                .remark(true, LimitsRemark.MINOR_FOR_REFERENCE)
                .withPitch(pitchMax, pitchMax.subtract(tolerance), allowance, LimitsBasis.FORMULA);
    }

    private ThreadLimits internal(BigDecimal basicPitch, BigDecimal tolerance) {
        UnifiedNutBore bore = UnifiedNutBore.of(diameter, pitch, threadClass.pitchGrade());
        return drafted.majorLeast(inch(diameter))
                .minor(bore.greatest(), bore.least())
                .withPitch(basicPitch.add(tolerance), basicPitch, BigDecimal.ZERO, LimitsBasis.FORMULA);
    }

    private BigDecimal tolerance(BigDecimal engaged) {
        return Rounded.to(
                PLACES_OF_THE_TOLERANCE,
                0.0015 * Math.cbrt(diameter.doubleValue())
                        + 0.0015 * Math.sqrt(engaged.doubleValue())
                        + 0.015 * rootOfSquare(pitch.doubleValue()));
    }

    static double rootOfSquare(double figure) {
        return Math.cbrt(figure * figure);
    }

    private String shareOfTolerance() {
        return switch (threadClass.text()) {
            case "1A" -> "1.5";
            case "2A" -> "1";
            case "3A" -> "0.75";
            case "1B" -> "1.95";
            case "2B" -> "1.3";
            default -> "0.975";
        };
    }
}
