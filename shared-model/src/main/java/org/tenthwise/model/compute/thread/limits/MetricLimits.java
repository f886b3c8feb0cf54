package org.tenthwise.model.compute.thread.limits;

import static org.tenthwise.model.compute.thread.limits.Rounded.millimetre;

import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ThreadClass;
import org.tenthwise.model.thread.ThreadDesignation;
import org.tenthwise.model.thread.ThreadSeries;
import org.tenthwise.model.thread.ThreadSide;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;

/**
 * Limits of size of general purpose metric threads.
 *
 * <p>With D the basic major diameter and P the pitch: basic pitch diameter D − 0.649519 P, basic minor diameter D −
 * 1.082532 P, deviation and tolerances from the tables by pitch and by range of diameters. Screw: all three lower by
 * the deviation; the greatest minor diameter is that of a flat root, the least that of a rounded root, least pitch
 * diameter − 0.616025 P. Nut: all three higher by the deviation; the major diameter has no upper limit.
 *
 * <p>Millimetres to three places; the rounded root's from unrounded figures.
 *
 * <p>A diameter and pitch that ISO 261 does not list give a proposal where the tables reach; where they do not there is
 * no answer. Several starts are taken by their pitch.
 *
 * <p>Source: ISO 965-1, tables; ISO 724; minor diameters Machinery's Handbook, 27th ed., p. 1794. The formulas behind
 * the tables are not used: some figures were set by hand for a smooth run (ASME B1.13M, 6.2), as Td2 of grade 6 for P =
 * 0.5 above 2.8 mm.
 */
final class MetricLimits {

    private static final BigDecimal PITCH_LINE = new BigDecimal("0.649519052838");
    private static final BigDecimal DEPTH_OF_THREAD = new BigDecimal("1.082531754731");
    private static final BigDecimal ROUNDED_ROOT = new BigDecimal("0.616025403784");
    private static final RangeTable DEVIATIONS = RangeTable.beside("metric-deviations.csv");
    private static final RangeTable CRESTS = RangeTable.beside("metric-crests.csv");
    private static final RangeTable PITCH_EXTERNAL = RangeTable.beside("metric-pitch-external.csv");
    private static final RangeTable PITCH_INTERNAL = RangeTable.beside("metric-pitch-internal.csv");

    private final BigDecimal diameter;
    private final BigDecimal pitch;
    private final ThreadClass threadClass;
    private final BigDecimal exactPitchDiameter;
    private final BigDecimal basicMinor;
    private final LimitsBuilder drafted = new LimitsBuilder(Unit.MILLIMETRE);

    MetricLimits(ThreadDesignation designation) {
        this.diameter = designation.thread().diameter().in(Unit.MILLIMETRE);
        this.pitch = designation.thread().pitch().in(Unit.MILLIMETRE);
        this.threadClass = designation.threadClass();
        this.exactPitchDiameter = diameter.subtract(PITCH_LINE.multiply(pitch));
        this.basicMinor = millimetre(diameter.subtract(DEPTH_OF_THREAD.multiply(pitch)));
        drafted.remark(!ThreadSeries.lists(designation.thread()), LimitsRemark.NOT_IN_SERIES)
                .remark(designation.thread().starts() > 1, LimitsRemark.AS_FOR_ONE_START);
    }

    ThreadLimits on(ThreadSide side) {
        BigDecimal deviation = Character.toLowerCase(threadClass.letter()) == 'h'
                ? BigDecimal.ZERO
                : found(
                        DEVIATIONS.at(pitch, String.valueOf(threadClass.letter())),
                        Message.of("model.thread-limits.deviation", String.valueOf(threadClass.letter())));
        return side == ThreadSide.EXTERNAL ? external(deviation) : internal(deviation);
    }

    private ThreadLimits external(BigDecimal deviation) {
        BigDecimal majorTolerance = found(
                CRESTS.at(pitch, "e" + threadClass.crestGrade()),
                Message.of("model.thread-limits.grade-of-major", threadClass.crestGrade()));
        BigDecimal tolerance = found(
                PITCH_EXTERNAL.at(diameter, pitch, grade()), Message.of("model.thread-limits.grade-of-pitch", grade()));
        BigDecimal major = millimetre(diameter.subtract(deviation));
        BigDecimal pitchMax = millimetre(exactPitchDiameter).subtract(deviation);
        BigDecimal roundedRoot = millimetre(
                exactPitchDiameter.subtract(deviation).subtract(tolerance).subtract(ROUNDED_ROOT.multiply(pitch)));
        return drafted.major(major, major.subtract(majorTolerance))
                .minor(basicMinor.subtract(deviation), roundedRoot)
                .remark(true, LimitsRemark.MINOR_FLAT_AND_ROUNDED)
                .withPitch(pitchMax, pitchMax.subtract(tolerance), deviation, LimitsBasis.TABLE);
    }

    private ThreadLimits internal(BigDecimal deviation) {
        BigDecimal minorTolerance = found(
                CRESTS.at(pitch, "i" + threadClass.crestGrade()),
                Message.of("model.thread-limits.grade-of-minor", threadClass.crestGrade()));
        BigDecimal tolerance = found(
                PITCH_INTERNAL.at(diameter, pitch, grade()), Message.of("model.thread-limits.grade-of-pitch", grade()));
        BigDecimal minor = basicMinor.add(deviation);
        BigDecimal pitchMin = millimetre(exactPitchDiameter).add(deviation);
        return drafted.majorLeast(millimetre(diameter.add(deviation)))
                .minor(minor.add(minorTolerance), minor)
                .withPitch(pitchMin.add(tolerance), pitchMin, deviation, LimitsBasis.TABLE);
    }

    private String grade() {
        return String.valueOf(threadClass.pitchGrade());
    }

    private BigDecimal found(Optional<BigDecimal> figure, Message what) {
        return figure.orElseThrow(() -> new Refused(
                "model.metric-limits.class-iso", threadClass, what, diameter.toPlainString(), pitch.toPlainString()));
    }
}
