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
            .gives(VERDICT, DISTANCE, CONFORMANCE_PROBABILITY, TEST_UNCERTAINTY_RATIO);

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
                .note(
                        margin.distance().signum() == 0 ? "on-limit" : margin.inside() ? "inside" : "outside",
                        margin.limit(),
                        margin.distance().in(given.inUnit()),
                        given.inUnit().symbol());
        Optional<Length> expanded = given.find(EXPANDED_UNCERTAINTY);
        BigDecimal factor = given.find(COVERAGE_FACTOR).orElse(TWO);
        if (expanded.isEmpty() && given.has(COVERAGE_FACTOR)) {
            answer.note("no-uncertainty", factor);
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
            throw new CannotAnswer(COVERAGE_FACTOR, "too-large", factor);
        }
        answer.put(CONFORMANCE_PROBABILITY, Conformance.probability(limits, size, standard));
        UncertaintyRatio.of(limits, expanded).ifPresent(ratio -> {
            answer.put(TEST_UNCERTAINTY_RATIO, ratio);
            if (ratio < USUAL_RATIO) {
                answer.note("ratio");
            }
        });
        if (margin.distance().isBelow(expanded)) {
            answer.note("near");
        }
    }

    /** As exact as the figures were typed, and never shorter than any other length. */
    private static int places(Length distance, Unit unit) {
        return Math.max(distance.in(unit).scale(), unit == Unit.INCH ? 8 : 6);
    }
}
