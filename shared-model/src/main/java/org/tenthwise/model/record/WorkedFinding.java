package org.tenthwise.model.record;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.WorkedCheck;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Message;

/**
 * A size or an angle worked out of what was read.
 *
 * @param at what was read at each place so far, and what it came to
 */
public record WorkedFinding(
        Step step,
        WorkedCheck check,
        List<At> at,
        Optional<Length> value,
        Optional<Measured> deciding,
        Verdict verdict,
        int missing,
        Optional<TemperatureEffect> warmth)
        implements Finding {

    /**
     * What was read at one place.
     *
     * @param raw as it was read, in the order asked for; some may be missing
     * @param readings the same, each as the size or the angle they come to together; empty while one is missing, and
     *     where they come to none
     * @param beside what is told beside the result
     * @param sensitivity how far the result moves for each unit of each reading: lengths for lengths, seconds of arc
     *     for a millimetre; absent where nobody can tell
     * @param refused why no such work could be read so; absent where it could
     * @param far whether the result is far off what the drawing asks for
     */
    public record At(
            Place place,
            List<Measured> raw,
            List<Measured> readings,
            Optional<Length> beside,
            List<Optional<BigDecimal>> sensitivity,
            Optional<Message> refused,
            boolean far) {

        public At {
            raw = List.copyOf(raw);
            readings = List.copyOf(readings);
            sensitivity = List.copyOf(sensitivity);
        }

        /** The size or the angle, by the reading it was complete with. */
        public Optional<Measured> worked() {
            return readings.stream().reduce((earlier, later) -> later);
        }
    }

    public WorkedFinding {
        at = List.copyOf(at);
    }

    @Override
    public List<Measured> measured() {
        return at.stream().flatMap(place -> place.readings().stream()).toList();
    }

    /** All of a place that comes to nothing, or to what is far off: nobody knows which of them it is. */
    @Override
    public List<Measured> farOff() {
        return at.stream()
                .filter(place -> place.far() || place.refused().isPresent())
                .flatMap(place -> place.raw().stream())
                .toList();
    }

    /** Why the readings of a place come to nothing; absent where all of them come to something. */
    public Optional<Message> refused() {
        return at.stream().flatMap(place -> place.refused().stream()).findFirst();
    }

    /**
     * How sure what was judged is, by how sure each reading is: each moves it by its own share, and they do not depend
     * on one another. Absent where the plan says nothing of it, or more than one place is judged together.
     *
     * <p>U = √Σ (c U)² with the sensitivities c (JCGM 100:2008, 5.1.2).
     */
    public Optional<Length> expanded() {
        return deciding.flatMap(judged -> check.ofAReading().flatMap(one -> at.stream()
                .filter(place -> place.worked().equals(Optional.of(judged)))
                .filter(place -> place.sensitivity().stream().allMatch(Optional::isPresent))
                .findFirst()
                .map(place -> {
                    BigDecimal squares = place.sensitivity().stream()
                            .flatMap(Optional::stream)
                            .map(factor -> factor.multiply(factor))
                            .reduce(BigDecimal.ZERO, BigDecimal::add);
                    BigDecimal moved = one.expanded().length().base().multiply(squares.sqrt(MathContext.DECIMAL64));
                    return new Length(moved, judged.value().kind());
                })));
    }

    /**
     * What is still to come off what is read, so that every place lies inside: more than zero.
     *
     * @param least brings the place with the most metal in
     * @param most leaves the place with the least metal in; absent with one limit; below {@code least} where no one cut
     *     brings all of them in
     */
    public record Left(Length least, Optional<Length> most) {

        public boolean isUneven() {
            return most.filter(least::isAbove).isPresent();
        }
    }

    /** Absent unless it is to be cut again. */
    public Optional<Left> left() {
        Optional<Limit> metal = check.cutAgainBeyond();
        return verdict.standing() != VerdictKind.CUT_AGAIN || metal.isEmpty()
                ? Optional.empty()
                : Optional.of(new Left(
                        Length.greatest(over(metal.get()))
                                .plus(check.guardBand().length()),
                        Optional.of(over(metal.get() == Limit.UPPER ? Limit.LOWER : Limit.UPPER))
                                .filter(over -> !over.isEmpty())
                                .map(over -> Length.greatest(over)
                                        .negated()
                                        .minus(check.guardBand().length()))));
    }

    /** No one cut brings all places in. */
    @Override
    public boolean forbidsCutting() {
        return left().filter(Left::isUneven).isPresent();
    }

    /** How far each place lies outside a limit, less than zero inside; empty without that limit. */
    private List<Length> over(Limit limit) {
        return check.limits().at(limit).stream()
                .flatMap(bound -> at.stream()
                        .flatMap(place -> place.worked().stream())
                        .map(read -> read.value().minus(bound.length()))
                        .map(above -> limit == Limit.UPPER ? above : above.negated()))
                .toList();
    }

    @Override
    public List<Measured> readFor(Measured measured) {
        return at.stream()
                .map(At::readings)
                .filter(readings -> readings.contains(measured))
                .findFirst()
                .orElse(List.of(measured));
    }

    @Override
    public boolean isOfOneSize() {
        return true;
    }

    @Override
    public boolean awaitsAnother() {
        return false;
    }

    @Override
    public Optional<Verdict> alone(Measured reading) {
        return ByItself.of(
                check, reading, warmth.filter(heat -> heat.missing() > 0).isPresent(), false, Plausible.spoils(this));
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.worked(this);
    }
}
