package org.tenthwise.model.record;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.stream.Stream;
import org.tenthwise.model.compute.expression.Reach;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.plan.CalculatedCheck;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.record.CalculatedFinding.Part;
import org.tenthwise.model.record.CalculatedFinding.Standing;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.Judge;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Refused;

/**
 * A size worked out of others: open while one of them is or is still to be cut, judged at its least and at its
 * greatest, and never shown in or out by a figure that is in doubt itself.
 */
final class CalculatedAssessment {

    /** A sum with a root or an angle is good to that many places of a millimetre or a second. */
    private static final int PLACES_OF_A_ROOT = 6;

    private static final int MOST_PLACES = 12;

    private final Unit unit;
    private final Step step;
    private final CalculatedCheck check;
    private final Map<Integer, Finding> found = new LinkedHashMap<>();
    private final IntPredicate stillToCut;
    private final List<Part> parts;

    private CalculatedAssessment(
            Unit unit, Step step, CalculatedCheck check, IntFunction<Finding> found, IntPredicate stillToCut) {
        this.unit = unit;
        this.step = step;
        this.check = check;
        this.stillToCut = stillToCut;
        check.uses().forEach(use -> this.found.computeIfAbsent(use.step(), found::apply));
        this.parts = check.uses().stream().map(this::part).toList();
    }

    /**
     * @param unit of the plan
     * @param found what an earlier step comes to
     * @param stillToCut whether an earlier step is to be cut again
     */
    static CalculatedFinding of(
            Unit unit, Step step, CalculatedCheck check, IntFunction<Finding> found, IntPredicate stillToCut) {
        return new CalculatedAssessment(unit, step, check, found, stillToCut).finding();
    }

    private CalculatedFinding finding() {
        if (parts.stream().anyMatch(part -> part.is(Standing.OPEN))) {
            return new CalculatedFinding(
                    step,
                    check,
                    parts,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    first(Standing.OPEN).orElseThrow(),
                    Verdict.plain(VerdictKind.OPEN));
        }
        try {
            return judged(check.of().over(figures()));
        } catch (Refused e) {
            return new CalculatedFinding(
                    step,
                    check,
                    parts,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(e.why()),
                    first(Standing.DOUBTED).orElseGet(this::movesMost),
                    Verdict.plain(VerdictKind.UNPROVEN));
        }
    }

    private CalculatedFinding judged(Reach reach) {
        Length least = length(reach.least());
        Length greatest = length(reach.greatest());
        Judge judge = new Judge(check.limits(), least.zero(), Optional.empty());
        Length deciding = Stream.of(least, greatest)
                .min(Comparator.<Length, Boolean>comparing(
                                size -> judge.of(size).passed())
                        .thenComparing(size -> room(judge.of(size))))
                .orElseThrow();
        Verdict verdict = judge.of(deciding);
        Optional<Integer> doubted = first(Standing.DOUBTED);
        return new CalculatedFinding(
                step,
                check,
                parts,
                Optional.of(least),
                Optional.of(greatest),
                Optional.of(deciding),
                expanded(),
                Optional.empty(),
                doubted.or(() -> parts.stream()
                                .map(part -> part.use().step())
                                .filter(number -> !found.get(number).verdict().passed())
                                .findFirst())
                        .orElseGet(this::movesMost),
                doubted.isPresent() ? new Verdict(VerdictKind.UNPROVEN, verdict.margin()) : verdict);
    }

    private static Length room(Verdict verdict) {
        Verdict.Margin margin = verdict.margin().orElseThrow();
        return margin.inside() ? margin.distance() : margin.distance().negated();
    }

    private Optional<Integer> first(Standing standing) {
        return parts.stream()
                .filter(part -> part.is(standing))
                .map(part -> part.use().step())
                .findFirst();
    }

    /** The step whose sizes lie furthest apart; the first where they all agree. */
    private Integer movesMost() {
        return parts.stream()
                .max(Comparator.<Part, BigDecimal>comparing(part -> Length.greatest(part.sizes())
                                .minus(Length.least(part.sizes()))
                                .base())
                        .thenComparing(part -> -parts.indexOf(part)))
                .orElseThrow()
                .use()
                .step();
    }

    private Part part(CalculatedCheck.Use use) {
        Finding of = found.get(use.step());
        VerdictKind standing = of.verdict().standing();
        if (standing == VerdictKind.OPEN
                || stillToCut.test(use.step())
                || of.missing() > 0
                || of.comesTo().isEmpty()) {
            return new Part(use, of.step(), List.of(), 0, Standing.OPEN);
        }
        boolean doubted = Plausible.spoils(of) || standing == VerdictKind.UNPROVEN;
        return new Part(
                use, of.step(), by(use.by(), of.comesTo()), places(of), doubted ? Standing.DOUBTED : Standing.FOUND);
    }

    /** Each reading counts, so that the finest of them does. */
    private static int places(Finding of) {
        Limits limits = of.step().limits().orElseThrow();
        return of.measured().stream()
                .mapToInt(measured -> Decimals.of(measured, limits))
                .max()
                .orElseGet(() -> Decimals.of(of, limits));
    }

    private static List<Length> by(CalculatedCheck.By by, List<Length> sizes) {
        return switch (by) {
            case EACH, RUN_OUT, MOVEMENT -> sizes;
            case LEAST -> List.of(Length.least(sizes));
            case GREATEST -> List.of(Length.greatest(sizes));
            case MEAN -> List.of(Length.mean(sizes));
            case ECCENTRICITY -> {
                Length half = Length.greatest(sizes).half();
                yield List.of(half.negated(), half);
            }
        };
    }

    private Map<String, List<BigDecimal>> figures() {
        Map<String, List<BigDecimal>> figures = new LinkedHashMap<>();
        parts.forEach(part -> figures.put(
                part.use().name(), part.sizes().stream().map(this::figure).toList()));
        return figures;
    }

    private BigDecimal figure(Length size) {
        return size.in(size.kind().equals(QuantityKind.ANGLE) ? Unit.DEGREE : unit);
    }

    /** In decimals that end: a root, a sine and what a division leaves are rounded to 1 nm. */
    private Length length(BigDecimal figure) {
        boolean angle = check.limits().unit().isOfAngle();
        Length exact = Length.of(figure, angle ? Unit.DEGREE : unit);
        return exact.base().scale() <= MOST_PLACES
                ? exact
                : new Length(exact.base().setScale(PLACES_OF_A_ROOT, RoundingMode.HALF_EVEN), exact.kind());
    }

    /**
     * At k = 2. What is measured in one way leans the same way, so that it adds up in full; what is measured in another
     * does not depend on it (JCGM 100:2008, 5.2.2). Absent where something has no uncertainty.
     */
    private Optional<Length> expanded() {
        Map<String, String> ways = new LinkedHashMap<>();
        Map<String, BigDecimal> uncertainties = new LinkedHashMap<>();
        for (Part part : parts) {
            Finding of = found.get(part.use().step());
            Optional<Length> own = of.expanded();
            if (own.isEmpty()) {
                return Optional.empty();
            }
            boolean half = part.use().by() == CalculatedCheck.By.ECCENTRICITY;
            uncertainties.put(part.use().name(), figure(half ? own.get().half() : own.get()));
            ways.put(
                    part.use().name(),
                    of.check()
                            .means()
                            .flatMap(Check.Means::uncertainty)
                            .map(Uncertainty::name)
                            .orElseGet(() -> String.valueOf(part.use().step())));
        }
        return check.of().expanded(figures(), uncertainties, ways).map(this::length);
    }
}
