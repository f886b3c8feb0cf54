package org.tenthwise.model.thread;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;

/**
 * A screw thread by its basic geometry.
 *
 * @param diameter basic major diameter, more than the depth of thread allows for a core
 * @param pitch axial pitch, more than zero; threads to the inch are turned into it by the reader of the plan
 * @param starts one or more
 */
public record ScrewThread(ThreadForm form, Length diameter, Length pitch, int starts) {

    private static final int PLACES_OF_A_COUNT = 6;
    private static final int PLACES_OF_A_METRIC_SIZE = 3;
    private static final int PLACES_OF_AN_INCH_SIZE = 6;
    private static final BigDecimal QUARTERS = BigDecimal.valueOf(4);
    private static final BigDecimal NEAR = new BigDecimal("0.001");

    public ScrewThread {
        if (pitch.signum() <= 0) {
            throw new Refused("model.screw-thread.pitch-more", pitch);
        }
        if (starts < 1) {
            throw new Refused("model.screw-thread.thread-one", starts);
        }
        if (Nanometres.of(diameter) <= 2 * form.basicRootDepth() * Nanometres.of(pitch)) {
            throw new Refused("model.screw-thread.diameter-leaves", diameter, pitch);
        }
    }

    /**
     * The pitch that so many threads to the inch have, to 1e-12 mm.
     *
     * @param threadsToTheInch more than zero
     */
    public static Length pitchOf(BigDecimal threadsToTheInch) {
        return Length.of("1", Unit.INCH).dividedBy(threadsToTheInch);
    }

    /** Threads to the inch, to 1e-6: the other way round. */
    public BigDecimal threadsToTheInch() {
        return Length.of("1", Unit.INCH)
                .millimetres()
                .divide(pitch.millimetres(), PLACES_OF_A_COUNT, RoundingMode.HALF_EVEN);
    }

    /**
     * The thread these figures stand for. A pitch of an inch form within a thousandth of a whole or quarter number of
     * threads to the inch is that number: 0.0833 in is 12. Metric sizes are whole micrometres, so that one written in
     * inches is itself.
     */
    public ScrewThread nominal() {
        if (form.isMetric()) {
            return new ScrewThread(
                    form,
                    to(PLACES_OF_A_METRIC_SIZE, diameter, Unit.MILLIMETRE),
                    to(PLACES_OF_A_METRIC_SIZE, pitch, Unit.MILLIMETRE),
                    starts);
        }
        BigDecimal count = threadsToTheInch();
        BigDecimal quarters =
                count.multiply(QUARTERS).setScale(0, RoundingMode.HALF_EVEN).divide(QUARTERS);
        boolean near = quarters.signum() > 0 && count.subtract(quarters).abs().compareTo(count.multiply(NEAR)) <= 0;
        return new ScrewThread(
                form, to(PLACES_OF_AN_INCH_SIZE, diameter, Unit.INCH), near ? pitchOf(quarters) : pitch, starts);
    }

    /** Axial travel in one turn: pitch times starts. */
    public Length lead() {
        return pitch.times(BigDecimal.valueOf(starts));
    }

    /** Basic pitch diameter, rounded to 1 nm. */
    public Length basicPitchDiameter() {
        return Nanometres.round(Nanometres.of(diameter) - 2 * form.pitchLineDepth() * Nanometres.of(pitch));
    }

    /** Basic minor diameter, rounded to 1 nm: that of the basic profile, with no clearance. */
    public Length basicMinorDiameter() {
        return Nanometres.round(Nanometres.of(diameter) - 2 * form.basicRootDepth() * Nanometres.of(pitch));
    }

    private static Length to(int places, Length length, Unit unit) {
        return Length.of(length.in(unit).setScale(places, RoundingMode.HALF_EVEN), unit);
    }
}
