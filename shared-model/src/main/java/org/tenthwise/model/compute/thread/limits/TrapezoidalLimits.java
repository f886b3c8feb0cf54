package org.tenthwise.model.compute.thread.limits;

import static org.tenthwise.model.compute.thread.limits.Rounded.millimetre;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ThreadClass;
import org.tenthwise.model.thread.ThreadDesignation;
import org.tenthwise.model.thread.ThreadSeries;
import org.tenthwise.model.thread.ThreadSide;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;

/**
 * Limits of size of metric trapezoidal threads.
 *
 * <p>With d the basic major diameter, P the pitch, ac the clearance at the crest: basic pitch diameter d − P/2. Screw:
 * major d with Td(4); pitch lower by the deviation es, with Td2; minor d − P − 2 ac with 1.25 Td2 + es. Nut: major d +
 * 2 ac, without an upper limit; pitch with TD2; minor d − P with TD1(4).
 *
 * <p>Millimetres to three places; 1.25 Td2 is rounded half-even to a micrometre before es is added.
 *
 * <p>For several starts Td2 and TD2 are made larger by 1.12 (two), 1.25 (three), 1.4 (four), 1.6 (five and more), to a
 * micrometre; the minor diameter of the screw keeps the tolerance of one start. A diameter and pitch that ISO 2904 does
 * not list give a proposal where the tables reach; where they do not there is no answer.
 *
 * <p>Source: ISO 2903, tables; ISO 2904; clearance ISO 2901. The factors for several starts from memory of ISO 2903.
 */
final class TrapezoidalLimits {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final BigDecimal HALF = new BigDecimal("0.5");
    private static final BigDecimal ROOT = new BigDecimal("1.25");

    /** What printed limits were compared with. */
    private static final String CHECKED_CLASS = "7e";

    private static final BigDecimal COARSEST_CHECKED = BigDecimal.valueOf(7);

    private static final RangeTable CRESTS = RangeTable.beside("trapezoidal-crests.csv");
    private static final RangeTable PITCH_EXTERNAL = RangeTable.beside("trapezoidal-pitch-external.csv");
    private static final RangeTable PITCH_INTERNAL = RangeTable.beside("trapezoidal-pitch-internal.csv");

    private final BigDecimal diameter;
    private final BigDecimal pitch;
    private final ThreadClass threadClass;
    private final BigDecimal factor;
    private final BigDecimal basicPitch;
    private final BigDecimal basicMinor;
    private final BigDecimal bothClearances;
    private final LimitsBuilder drafted = new LimitsBuilder(Unit.MILLIMETRE);

    TrapezoidalLimits(ThreadDesignation designation) {
        this.diameter = designation.thread().diameter().in(Unit.MILLIMETRE);
        this.pitch = designation.thread().pitch().in(Unit.MILLIMETRE);
        this.threadClass = designation.threadClass();
        this.factor = factor(designation.thread().starts());
        this.basicPitch = millimetre(diameter.subtract(pitch.multiply(HALF)));
        this.basicMinor = millimetre(diameter.subtract(pitch));
        this.bothClearances =
                byPitch("ac", Message.of("model.thread-limits.clearance")).multiply(TWO);
        drafted.remark(!ThreadSeries.lists(designation.thread()), LimitsRemark.NOT_IN_SERIES)
                .remark(designation.thread().starts() > 1, LimitsRemark.WIDENED_FOR_STARTS)
                .remark(
                        !threadClass.text().equals(CHECKED_CLASS) || pitch.compareTo(COARSEST_CHECKED) > 0,
                        LimitsRemark.RECALLED);
    }

    ThreadLimits on(ThreadSide side) {
        return side == ThreadSide.EXTERNAL ? external() : internal();
    }

    private ThreadLimits external() {
        BigDecimal deviation = byPitch(
                String.valueOf(threadClass.letter()),
                Message.of("model.thread-limits.deviation", String.valueOf(threadClass.letter())));
        BigDecimal oneStart = pitchTolerance(PITCH_EXTERNAL);
        BigDecimal major = millimetre(diameter);
        BigDecimal pitchMax = basicPitch.subtract(deviation);
        BigDecimal minor = basicMinor.subtract(bothClearances);
        return drafted.major(major, major.subtract(byPitch("major", Message.of("model.thread-limits.of-major"))))
                .minor(
                        minor,
                        minor.subtract(micrometre(oneStart.multiply(ROOT))).subtract(deviation))
                .withPitch(
                        pitchMax,
                        pitchMax.subtract(micrometre(oneStart.multiply(factor))),
                        deviation,
                        LimitsBasis.TABLE);
    }

    private ThreadLimits internal() {
        BigDecimal tolerance = micrometre(pitchTolerance(PITCH_INTERNAL).multiply(factor));
        return drafted.majorLeast(millimetre(diameter.add(bothClearances)))
                .minor(basicMinor.add(byPitch("minor", Message.of("model.thread-limits.of-minor"))), basicMinor)
                .withPitch(basicPitch.add(tolerance), basicPitch, BigDecimal.ZERO, LimitsBasis.TABLE);
    }

    private BigDecimal pitchTolerance(RangeTable table) {
        return found(
                table.at(diameter, pitch, String.valueOf(threadClass.pitchGrade())),
                Message.of("model.thread-limits.grade-of-pitch", threadClass.pitchGrade()));
    }

    private BigDecimal byPitch(String heading, Message what) {
        return found(CRESTS.at(pitch, heading), what);
    }

    private BigDecimal found(Optional<BigDecimal> figure, Message what) {
        return figure.orElseThrow(() -> new Refused(
                "model.trapezoidal-limits.class-iso",
                threadClass,
                what,
                diameter.toPlainString(),
                pitch.toPlainString()));
    }

    private static BigDecimal micrometre(BigDecimal tolerance) {
        return tolerance.setScale(Rounded.PLACES_OF_A_MILLIMETRE, RoundingMode.HALF_EVEN);
    }

    private static BigDecimal factor(int starts) {
        return switch (starts) {
            case 1 -> BigDecimal.ONE;
            case 2 -> new BigDecimal("1.12");
            case 3 -> new BigDecimal("1.25");
            case 4 -> new BigDecimal("1.4");
            default -> new BigDecimal("1.6");
        };
    }
}
