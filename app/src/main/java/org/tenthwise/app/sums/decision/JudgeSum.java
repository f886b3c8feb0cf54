package org.tenthwise.app.sums.decision;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.uncertainty.Conformance;
import org.tenthwise.model.compute.uncertainty.UncertaintyRatio;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.Judge;
import org.tenthwise.model.verdict.Verdict;

/** A size against its limits. */
final class JudgeSum implements Sum {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final double USUAL_RATIO = 4;

    @Override
    public String name() {
        return "judge";
    }

    @Override
    public Set<String> keys() {
        return Set.of("lower", "upper", "value", "expanded_uncertainty", "coverage_factor", "guard_band");
    }

    @Override
    public SumResult of(SumInput given) {
        Limits limits = LimitInputs.of(given);
        Length size = given.length("value");
        Length guardBand = LimitInputs.guardBand(given, limits);
        Verdict verdict = new Judge(limits, guardBand, Optional.empty()).of(size);
        Verdict.Margin margin = verdict.margin().orElseThrow();
        SumResult.Writing answer = SumResult.in(given.inUnit())
                .word("verdict", verdict.standing().name().toLowerCase(Locale.ROOT))
                .length("distance", margin.distance(), places(margin.distance(), given.inUnit()))
                .note(where(margin, given.inUnit()));
        Optional<Length> expanded = given.ifGiven("expanded_uncertainty", given::positiveLength);
        BigDecimal factor = given.ifGiven("coverage_factor", given::positive).orElse(TWO);
        if (expanded.isEmpty() && given.has("coverage_factor")) {
            answer.note("No expanded_uncertainty was given, so the coverage_factor of %s was not used."
                    .formatted(factor.toPlainString()));
        }
        expanded.ifPresent(known -> uncertain(answer, limits, size, margin, known, factor));
        return answer.on(
                "ISO 14253-1 and JCGM 106:2012, 8.3 (guard band); JCGM 106:2012, 7 (probability); ANSI/NCSL Z540.3 "
                        + "(ratio)");
    }

    private static void uncertain(
            SumResult.Writing answer,
            Limits limits,
            Length size,
            Verdict.Margin margin,
            Length expanded,
            BigDecimal factor) {
        Length standard = expanded.dividedBy(factor);
        if (standard.signum() == 0) {
            throw new CannotAnswer(
                    "coverage_factor",
                    "coverage_factor is %s: it leaves nothing of the expanded_uncertainty"
                            .formatted(factor.toPlainString()));
        }
        answer.figure("conformance_probability", Conformance.probability(limits, size, standard));
        UncertaintyRatio.of(limits, expanded).ifPresent(ratio -> {
            answer.figure("test_uncertainty_ratio", ratio);
            if (ratio < USUAL_RATIO) {
                answer.note("The uncertainty is more than an eighth of the tolerance: the usual ratio of 4 : 1 is not "
                        + "met.");
            }
        });
        if (margin.distance().isBelow(expanded)) {
            answer.note("The limit is nearer than the uncertainty: neither conforming nor not conforming is proven by "
                    + "the whole of it.");
        }
    }

    private static String where(Verdict.Margin margin, Unit unit) {
        String limit = margin.limit().name().toLowerCase(Locale.ROOT);
        if (margin.distance().signum() == 0) {
            return "The size is on the %s limit.".formatted(limit);
        }
        return "The size is %s %s %s the %s limit."
                .formatted(
                        margin.distance().in(unit).toPlainString(),
                        unit.symbol(),
                        margin.inside() ? "inside" : "outside",
                        limit);
    }

    /** As exact as the figures were typed, and never shorter than any other length. */
    private static int places(Length distance, Unit unit) {
        return Math.max(distance.in(unit).scale(), unit == Unit.INCH ? 8 : 6);
    }
}
