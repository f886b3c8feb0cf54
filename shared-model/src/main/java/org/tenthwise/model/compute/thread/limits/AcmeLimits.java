package org.tenthwise.model.compute.thread.limits;

import static org.tenthwise.model.compute.thread.limits.Rounded.inch;

import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadDesignation;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.thread.ThreadSeries;
import org.tenthwise.model.thread.ThreadSide;

/**
 * Limits of size of general purpose and of stub Acme threads.
 *
 * <p>With D the basic major diameter, P the pitch, and h the basic height of thread, 0.5 P or for the stub form 0.3 P:
 * basic pitch diameter D − h, basic minor diameter D − 2h; clearance k 0.020 with up to 10 threads to the inch, else
 * 0.010; tolerance of the pitch diameter T = d √D + p √P with d, p = 0.006, 0.030 (2G), 0.0028, 0.014 (3G), 0.002,
 * 0.010 (4G); tolerance of the crests 0.05 P, of the full form 0.005 at least. Screw: major D, pitch D − h −
 * {@link AcmeAllowance}, minor D − 2h − k with 1.5 T, stub T. Nut: major D + k with a tolerance of k, stub T; pitch D −
 * h; minor D − 2h.
 *
 * <p>Inches to four places. The tolerance of the screw's minor diameter is taken unrounded from its rounded greatest.
 *
 * <p>A diameter and pitch outside the series give a proposal, and so do the classes 3G and 4G for the stub form, and
 * several starts, taken by their pitch.
 *
 * <p>Source: ASME B1.5 (Machinery's Handbook, 27th ed., table 8a, p. 1837, and table 12, p. 1842); ASME B1.8,
 * allowances and tolerances as for class 2G. From memory: d and p, the nut's greatest major diameter, and for the stub
 * form the minor tolerance and the crest tolerance without a floor.
 */
final class AcmeLimits {

    private static final BigDecimal FULL_HEIGHT = new BigDecimal("0.5");
    private static final BigDecimal STUB_HEIGHT = new BigDecimal("0.3");
    private static final BigDecimal CREST = new BigDecimal("0.05");
    private static final BigDecimal LEAST_CREST = new BigDecimal("0.005");
    private static final BigDecimal ROOT = new BigDecimal("1.5");
    private static final BigDecimal WIDE_CLEARANCE = new BigDecimal("0.020");
    private static final BigDecimal NARROW_CLEARANCE = new BigDecimal("0.010");
    private static final BigDecimal FINEST_WITH_WIDE_CLEARANCE = BigDecimal.TEN;

    private final ThreadDesignation designation;
    private final boolean stub;
    private final BigDecimal diameter;
    private final BigDecimal basicPitch;
    private final BigDecimal basicMinor;
    private final BigDecimal clearance;
    private final BigDecimal crest;
    private final BigDecimal tolerance;
    private final LimitsBuilder drafted = new LimitsBuilder(Unit.INCH);

    AcmeLimits(ThreadDesignation designation) {
        ScrewThread thread = designation.thread();
        this.designation = designation;
        this.stub = thread.form() == ThreadForm.STUB_ACME;
        this.diameter = thread.diameter().in(Unit.INCH);
        BigDecimal pitch = thread.pitch().in(Unit.INCH);
        BigDecimal height = pitch.multiply(stub ? STUB_HEIGHT : FULL_HEIGHT);
        this.basicPitch = diameter.subtract(height);
        this.basicMinor = basicPitch.subtract(height);
        this.clearance = thread.threadsToTheInch().compareTo(FINEST_WITH_WIDE_CLEARANCE) <= 0
                ? WIDE_CLEARANCE
                : NARROW_CLEARANCE;
        this.crest = stub ? pitch.multiply(CREST) : pitch.multiply(CREST).max(LEAST_CREST);
        this.tolerance = tolerance(designation.threadClass().pitchGrade(), diameter.doubleValue(), pitch.doubleValue());
        drafted.remark(!ThreadSeries.lists(thread), LimitsRemark.NOT_IN_SERIES)
                .remark(stub && designation.threadClass().pitchGrade() > 2, LimitsRemark.CLASS_NOT_LISTED)
                .remark(thread.starts() > 1, LimitsRemark.AS_FOR_ONE_START)
                .remark(stub || designation.side().equals(Optional.of(ThreadSide.INTERNAL)), LimitsRemark.RECALLED);
    }

    ThreadLimits on(ThreadSide side) {
        return side == ThreadSide.EXTERNAL ? external() : internal();
    }

    private ThreadLimits external() {
        BigDecimal allowance =
                AcmeAllowance.of(diameter, designation.threadClass().text());
        BigDecimal pitchMax = inch(basicPitch.subtract(allowance));
        BigDecimal minorMax = inch(basicMinor.subtract(clearance));
        BigDecimal minorTolerance = stub ? tolerance : tolerance.multiply(ROOT);
        return drafted.major(inch(diameter), inch(diameter.subtract(crest)))
                .minor(minorMax, inch(minorMax.subtract(minorTolerance)))
                .withPitch(pitchMax, inch(pitchMax.subtract(tolerance)), allowance, LimitsBasis.FORMULA);
    }

    private ThreadLimits internal() {
        BigDecimal majorMin = diameter.add(clearance);
        BigDecimal pitchMin = inch(basicPitch);
        return drafted.major(inch(majorMin.add(stub ? tolerance : clearance)), inch(majorMin))
                .minor(inch(basicMinor.add(crest)), inch(basicMinor))
                .withPitch(pitchMin.add(inch(tolerance)), pitchMin, BigDecimal.ZERO, LimitsBasis.FORMULA);
    }

    private static BigDecimal tolerance(int number, double diameter, double pitch) {
        double byDiameter = number == 2 ? 0.006 : number == 3 ? 0.0028 : 0.002;
        double byPitch = number == 2 ? 0.030 : number == 3 ? 0.014 : 0.010;
        return BigDecimal.valueOf(byDiameter * Math.sqrt(diameter) + byPitch * Math.sqrt(pitch));
    }
}
