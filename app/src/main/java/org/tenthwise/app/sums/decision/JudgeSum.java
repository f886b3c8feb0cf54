package org.tenthwise.app.sums.decision;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
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
public final class JudgeSum implements Sum {

    public static final Input<Length> VALUE = Input.length("value");
    public static final Input<Length> EXPANDED_UNCERTAINTY =
            Input.positiveLength("expanded_uncertainty").optional();
    public static final Input<BigDecimal> COVERAGE_FACTOR =
            Input.positive("coverage_factor").usually("2");
    public static final Output<String> VERDICT = Output.word("verdict", "pass", "fail", "unproven");
    public static final Output<Length> DISTANCE = Output.length("distance");
    public static final Output<Double> CONFORMANCE_PROBABILITY =
            Output.figure("conformance_probability").sometimes();
    public static final Output<Double> TEST_UNCERTAINTY_RATIO =
            Output.figure("test_uncertainty_ratio").sometimes();
    private static final SumDescription DESCRIPTION = SumDescription.named("judge")
            .takes(
                    LimitInputs.LOWER,
                    LimitInputs.UPPER,
                    VALUE,
                    EXPANDED_UNCERTAINTY,
                    COVERAGE_FACTOR,
                    LimitInputs.GUARD_BAND)
            .gives(VERDICT, DISTANCE, CONFORMANCE_PROBABILITY, TEST_UNCERTAINTY_RATIO)
            .on("ISO 14253-1 and JCGM 106:2012, 8.3 (guard band); JCGM 106:2012, 7 (probability); ANSI/NCSL Z540.3 "
                    + "(ratio)");

    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final double USUAL_RATIO = 4;

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Limits limits = LimitInputs.of(given);
        Length size = given.get(VALUE);
        Length guardBand = LimitInputs.guardBand(given, limits);
        Verdict verdict = new Judge(limits, guardBand, Optional.empty()).of(size);
        Verdict.Margin margin = verdict.margin().orElseThrow();
        SumResult.Writing answer = DESCRIPTION
                .in(given.inUnit())
                .put(VERDICT, verdict.standing().name().toLowerCase(Locale.ROOT))
                .put(DISTANCE, margin.distance(), places(margin.distance(), given.inUnit()))
                .note(where(margin, given.inUnit()));
        Optional<Length> expanded = given.find(EXPANDED_UNCERTAINTY);
        BigDecimal factor = given.find(COVERAGE_FACTOR).orElse(TWO);
        if (expanded.isEmpty() && given.has(COVERAGE_FACTOR)) {
            answer.note("No expanded_uncertainty was given, so the coverage_factor of %s was not used."
                    .formatted(factor.toPlainString()));
        }
        expanded.ifPresent(known -> uncertain(answer, limits, size, margin, known, factor));
        return answer.done();
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
                    COVERAGE_FACTOR,
                    "coverage_factor is %s: it leaves nothing of the expanded_uncertainty"
                            .formatted(factor.toPlainString()));
        }
        answer.put(CONFORMANCE_PROBABILITY, Conformance.probability(limits, size, standard));
        UncertaintyRatio.of(limits, expanded).ifPresent(ratio -> {
            answer.put(TEST_UNCERTAINTY_RATIO, ratio);
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
