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
import org.tenthwise.model.record.Decimals;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.tolerance.Limits;

/**
 * How the sizes of one step are written, on every screen and in the printed record: in the unit of its limits, with the
 * places {@link Decimals} says. A figure that a verdict hangs on gets the places more that keep it on its own side of
 * every limit and of every edge of the guard band.
 */
public final class StepFigures {

    /** More places than this no register has: such a figure has no end. */
    private static final int FINEST = 6;
    /** A mean of four ends two places behind its readings; with more it need not end. */
    private static final int PLACES_OF_A_MEAN = 2;

    private static final String LESS_THAN = "<";

    private final Limits limits;
    /** Where a verdict changes. */
    private final List<Length> edges;
    /** Zero for none. */
    private final Length guardBand;

    /** Of what is no size of one reading: the most of any. */
    private final int places;
    /** Of the size judged. */
    private final int placesJudged;
    /** Whether the size judged is the mean of the readings. */
    private final boolean mean;

    private StepFigures(
            Limits limits, List<Length> edges, Length guardBand, int places, int placesJudged, boolean mean) {
        this.limits = limits;
        this.edges = edges;
        this.guardBand = guardBand;
        this.places = places;
        this.placesJudged = placesJudged;
        this.mean = mean;
    }

    /** @throws IllegalArgumentException if the step measures nothing */
    public static StepFigures of(Finding finding) {
        Limits limits = limits(finding.step());
        return of(
                finding.step(),
                finding.allowed(),
                Math.max(limits.places(), Decimals.read(finding.measured(), limits.unit())),
                Decimals.of(finding, limits));
    }

    /**
     * The same for a step of which nothing but the places of the size judged is at hand.
     *
     * @throws IllegalArgumentException if the step measures nothing
     */
    public static StepFigures of(Step step, int placesJudged) {
        return of(step, Optional.empty(), Math.max(limits(step).places(), placesJudged), placesJudged);
    }

    /** @param allowed how far the size may go with its bonus; absent where the limits alone say so */
    private static StepFigures of(Step step, Optional<Length> allowed, int places, int placesJudged) {
        Limits limits = limits(step);
        Length guardBand = step.check()
                .asDimension()
                .map(size -> size.guardBand().length())
                .orElseGet(() -> Length.of(BigDecimal.ZERO, limits.unit()));
        boolean mean = step.check()
                .asDimension()
                .filter(size -> size.combine() == Combine.MEAN)
                .isPresent();
        return new StepFigures(limits, edges(limits, allowed, guardBand), guardBand, places, placesJudged, mean);
    }

    private static List<Length> edges(Limits limits, Optional<Length> allowed, Length guardBand) {
        return Stream.concat(
                        allowed.stream(),
                        Stream.of(limits.lower(), limits.upper())
                                .flatMap(Optional::stream)
                                .map(Written::length)
                                .flatMap(limit -> Stream.of(limit.minus(guardBand), limit, limit.plus(guardBand))))
                .toList();
    }

    private static Limits limits(Step step) {
        return step.limits()
                .orElseThrow(() -> new IllegalArgumentException("Step %s measures nothing".formatted(step.number())));
    }

    /** The same with as many places as the size of one of the readings has. */
    public StepFigures like(Measured measured) {
        return known(Decimals.of(measured, limits));
    }

    private StepFigures known(int known) {
        return new StepFigures(limits, edges, guardBand, known, known, mean);
    }

    public Unit unit() {
        return limits.unit();
    }

    public int places() {
        return places;
    }

    /** The size a reading stands for, whether it counts or not. */
    public String size(Measured measured) {
        return isOfAnotherKind(measured.value())
                ? Figures.withUnit(measured.reading().typed())
                : like(measured).size(measured.value());
    }

    /** Whether it stands beside no limit: an angle that is read with a length. */
    private boolean isOfAnotherKind(Length value) {
        return !value.kind().equals(unit().kind());
    }

    /**
     * The same of a reading of a part before.
     *
     * @param known places it is written with
     */
    public String size(Length size, int known) {
        return known(known).size(size);
    }

    /** What an indicator showed, which is no size: as it was typed, or the same in the unit of the limits. */
    public String indicated(Measured measured) {
        Written typed = measured.reading().typed();
        return typed.unit().equals(unit())
                ? Figures.written(typed)
                : like(measured).plain(typed.length());
    }

    /**
     * A size to be read beside the limits; never shown on a limit, or on an edge of the guard band, that it does not
     * lie on. An angle that is read with a length, in decimals of a degree.
     */
    public String size(Length size) {
        if (isOfAnotherKind(size)) {
            int inFull = Math.max(0, size.in(Unit.DEGREE).scale());
            return Figures.withUnit(Figures.plain(size, Unit.DEGREE, Math.min(inFull, FINEST)), Unit.DEGREE);
        }
        return Figures.beside(edges, size, unit(), places);
    }

    /** The size judged: the same, and a mean with the places it has behind its readings. */
    public String judged(Length size) {
        return Figures.beside(edges, size, unit(), mean ? placesOfAMean(size, placesJudged) : placesJudged);
    }

    /**
     * How far the size judged lies from a limit: never shown as zero, nor as far as the guard band reaches, when it is
     * not. Where that would take more than one place behind those that are known, it is less than the last of them:
     * {@code <0.0001}.
     */
    public String distance(Length distance) {
        int known = Math.max(limits.places(), placesJudged);
        List<Length> edges = List.of(distance.zero(), guardBand);
        Length next = Length.of(distance.in(unit()).setScale(known, RoundingMode.CEILING), unit());
        boolean bandBetween = guardBand.signum() > 0 && guardBand.isBelow(next);
        if (!mean && !bandBetween && Figures.places(edges, distance, unit(), known) > known + 1) {
            return LESS_THAN + Figures.number(next.in(unit()), unit());
        }
        return Figures.beside(edges, distance, unit(), mean ? placesOfAMean(distance, known) : known);
    }

    /**
     * In full where it ends soon behind the readings, so that size and distance still come to the limit; else with one
     * place more.
     */
    private int placesOfAMean(Length length, int known) {
        int inFull = length.in(unit()).stripTrailingZeros().scale();
        return inFull <= known ? known : inFull <= known + PLACES_OF_A_MEAN ? inFull : known + 1;
    }

    /**
     * The size of a reading and what it was corrected by, in the places of the size, so that the printed figures add
     * up; a correction that would read as none has more.
     *
     * @param correction signed; zero where nothing was corrected
     */
    public record CorrectionAndValue(String correction, String value) {}

    /** What was corrected is what was added once the gauge had shown a size, in whatever unit and set on whatever. */
    public CorrectionAndValue sum(Measured measured) {
        if (isOfAnotherKind(measured.value())) {
            return new CorrectionAndValue("0", size(measured));
        }
        BigDecimal value = shown(measured);
        BigDecimal correction = value.subtract(uncorrected(measured, value.scale()));
        String corrected = measured.correction().signum() == 0
                ? "0"
                : correction.signum() == 0
                        ? Figures.signed(measured.correction(), unit(), value.scale())
                        : (correction.signum() > 0 ? "+" : "") + Figures.number(correction, unit());
        return new CorrectionAndValue(corrected, size(measured));
    }

    /**
     * What wires make a reading bigger than the pitch diameter, in the places of the {@link #sum(Measured)} beside it.
     */
    public String overWires(Measured measured) {
        BigDecimal read = measured.reading().typed().length().in(unit());
        int shown = shown(measured).scale();
        return Figures.number(read.setScale(shown, RoundingMode.HALF_UP).subtract(uncorrected(measured, shown)));
    }

    private BigDecimal uncorrected(Measured measured, int shown) {
        return measured.uncorrected().in(unit()).setScale(shown, RoundingMode.HALF_UP);
    }

    /** A size as it is written. */
    private BigDecimal shown(Measured measured) {
        int shown = Figures.places(edges, measured.value(), unit(), Decimals.of(measured, limits));
        return measured.value().in(unit()).setScale(shown, RoundingMode.HALF_UP);
    }

    /** A distance, a change, a correction. */
    public String plain(Length length) {
        return Figures.plain(length, unit(), places);
    }

    /** With a plus where it is more than zero. */
    public String signed(Length length) {
        return Figures.signed(length, unit(), places);
    }

    /**
     * How far something lies off along an axis: in full where it ends with the readings, else, as on a bolt circle,
     * with the places of the size judged, so that it comes to that.
     */
    public String off(Length deviation) {
        int inFull = deviation.in(unit()).stripTrailingZeros().scale();
        return Figures.signed(deviation, unit(), inFull <= places ? places : placesJudged);
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
