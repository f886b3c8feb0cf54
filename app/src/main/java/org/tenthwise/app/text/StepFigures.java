package org.tenthwise.app.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.tolerance.Limits;

/**
 * How the sizes of one step are written: in the unit of its limits, with the places of its limits or of its readings,
 * whichever are more. A figure that a verdict hangs on gets the places more that keep it on its own side of every limit
 * and of every edge of the guard band.
 */
public final class StepFigures {

    /** More places than this no register has: such a figure has no end. */
    private static final int FINEST = 6;
    /** A mean of four ends two places behind its readings; with more it need not end. */
    private static final int PLACES_OF_A_MEAN = 2;

    private final Limits limits;
    /** Zero for none. */
    private final Length guardBand;

    private final int places;
    /** Whether the size judged is the mean of the readings. */
    private final boolean mean;

    private StepFigures(Limits limits, Length guardBand, int places, boolean mean) {
        this.limits = limits;
        this.guardBand = guardBand;
        this.places = places;
        this.mean = mean;
    }

    /** @throws IllegalArgumentException if the step measures nothing */
    public static StepFigures of(Finding finding) {
        Limits limits = finding.step()
                .limits()
                .orElseThrow(() -> new IllegalArgumentException(
                        "Step %d measures nothing".formatted(finding.step().number())));
        int read = finding.measured().stream()
                .mapToInt(m -> places(m.reading().typed(), limits.unit()))
                .max()
                .orElse(0);
        return of(finding.step(), Math.max(limits.places(), read));
    }

    /**
     * The same for a step of which nothing but the places is at hand.
     *
     * @throws IllegalArgumentException if the step measures nothing
     */
    public static StepFigures of(Step step, int places) {
        Limits limits = step.limits()
                .orElseThrow(() -> new IllegalArgumentException("Step %d measures nothing".formatted(step.number())));
        return step.check()
                .asDimension()
                .map(size -> new StepFigures(limits, size.guardBand().length(), places, size.combine() == Combine.MEAN))
                .orElseGet(() -> new StepFigures(limits, Length.of(BigDecimal.ZERO, limits.unit()), places, false));
    }

    /** The same for one of the readings, with the places its own figures are known to. */
    public static StepFigures of(Finding finding, Measured measured) {
        StepFigures all = of(finding);
        return new StepFigures(all.limits, all.guardBand, known(measured, all.unit()), all.mean);
    }

    /**
     * To how many places a size is known: as many as the reading, the certificate of its master and its zero were
     * written with.
     */
    private static int known(Measured measured, Unit unit) {
        return Stream.concat(
                        Stream.of(measured.reading().typed()),
                        measured.reading().setting().stream()
                                .flatMap(setting ->
                                        Stream.concat(setting.certified().stream(), setting.zero().stream())))
                .mapToInt(written -> places(written, unit))
                .max()
                .orElseThrow();
    }

    /** A place of an inch is 25 times as coarse as the same place of a millimetre. */
    private static int places(Written written, Unit unit) {
        return Math.max(0, written.places() + unit.placesMoreThan(written.unit()));
    }

    public Unit unit() {
        return limits.unit();
    }

    public int places() {
        return places;
    }

    /**
     * A size to be read beside the limits; never shown on a limit, or on an edge of the guard band, that it does not
     * lie on.
     */
    public String size(Length size) {
        return Figures.beside(edges(), size, unit(), places);
    }

    /** The size judged: the same, and a mean with the places it has behind its readings. */
    public String judged(Length size) {
        return Figures.beside(edges(), size, unit(), mean ? placesOfAMean(size) : places);
    }

    /**
     * How far the size judged lies from a limit: never shown as zero, nor as far as the guard band reaches, when it is
     * not.
     */
    public String distance(Length distance) {
        return Figures.beside(
                List.of(distance.zero(), guardBand), distance, unit(), mean ? placesOfAMean(distance) : places);
    }

    /** Where a verdict changes. */
    private List<Length> edges() {
        return Stream.of(limits.lower(), limits.upper())
                .flatMap(Optional::stream)
                .map(Written::length)
                .flatMap(limit -> Stream.of(limit.minus(guardBand), limit, limit.plus(guardBand)))
                .toList();
    }

    /**
     * In full where it ends soon behind the readings, so that size and distance still come to the limit; else with one
     * place more.
     */
    private int placesOfAMean(Length length) {
        int inFull = length.in(unit()).stripTrailingZeros().scale();
        return inFull <= places ? places : inFull <= places + PLACES_OF_A_MEAN ? inFull : places + 1;
    }

    /**
     * The size of a reading and what it was corrected by, in the places both are printed with, so that the printed
     * figures add up.
     *
     * @param correction signed; zero where nothing was corrected
     */
    public record CorrectionAndValue(String correction, String value) {}

    /** What was corrected is what was added once the gauge had shown a size, in whatever unit and set on whatever. */
    public CorrectionAndValue sum(Measured measured) {
        BigDecimal read = measured.uncorrected().in(unit());
        int shown = Figures.places(edges(), measured.value(), unit(), places);
        int added = measured.correction().signum() == 0 ? shown : Figures.places(measured.correction(), unit(), shown);
        BigDecimal value = measured.value().in(unit()).setScale(added, RoundingMode.HALF_UP);
        BigDecimal correction = value.subtract(read.setScale(added, RoundingMode.HALF_UP));
        return new CorrectionAndValue(
                measured.correction().signum() == 0
                        ? "0"
                        : (correction.signum() > 0 ? "+" : "") + Figures.number(correction, unit()),
                Figures.number(value, unit()));
    }

    /**
     * What wires make a reading bigger than the pitch diameter, in the places of the {@link #sum(Measured)} beside it.
     */
    public String overWires(Measured measured) {
        BigDecimal read = measured.reading().typed().length().in(unit());
        CorrectionAndValue sum = sum(measured);
        BigDecimal uncorrected =
                measured.uncorrected().in(unit()).setScale(new BigDecimal(sum.value()).scale(), RoundingMode.HALF_UP);
        return Figures.number(
                read.setScale(uncorrected.scale(), RoundingMode.HALF_UP).subtract(uncorrected));
    }

    /** A distance, a change, a correction. */
    public String plain(Length length) {
        return Figures.plain(length, unit(), places);
    }

    /** With a plus where it is more than zero. */
    public String signed(Length length) {
        return Figures.signed(length, unit(), places);
    }

    /** A change to be typed into an offset, signed, in full: rounded up it could take a place past size. */
    public String change(Length length) {
        return Figures.signed(length, unit(), finer(length));
    }

    /** An amount to take off, in full; one that has no end with one place more. */
    public String amount(Length length) {
        return Figures.plain(length, unit(), finer(length));
    }

    private int finer(Length length) {
        int inFull = length.in(unit()).stripTrailingZeros().scale();
        return inFull <= places ? places : inFull <= FINEST ? inFull : places + 1;
    }

    public String withUnit(Length length) {
        return Figures.withUnit(plain(length), unit());
    }
}
