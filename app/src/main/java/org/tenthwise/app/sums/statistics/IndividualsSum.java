package org.tenthwise.app.sums.statistics;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.statistics.Individuals;
import org.tenthwise.model.compute.statistics.Individuals.Factors;
import org.tenthwise.model.compute.statistics.Steadiness;

/** Limits of a chart of single readings in the order they were made. */
final class IndividualsSum implements Sum {

    @Override
    public String name() {
        return "individuals";
    }

    @Override
    public Set<String> keys() {
        return Set.of(SampleInputs.VALUES, "factors");
    }

    @Override
    public SumResult of(SumInput given) {
        List<BigDecimal> values = given.figures(SampleInputs.VALUES);
        Factors factors = given.ifGiven(
                        "factors", key -> given.choice(key, Map.of("printed", Factors.PRINTED, "exact", Factors.EXACT)))
                .orElse(Factors.PRINTED);
        Individuals chart = given.about(SampleInputs.VALUES, () -> Individuals.of(values, factors));
        SumResult.Writing answer = SumResult.in(SampleInputs.unit(given))
                .exact("centre", Wording.full(chart.centre()))
                .exact("mean_moving_range", Wording.full(chart.meanMovingRange()));
        chart.limits().ifPresent(limits -> answer.exact("upper", Wording.full(limits.upper()))
                .exact("lower", Wording.full(limits.lower()))
                .exact("moving_range_upper", Wording.full(limits.movingRangeUpper())));
        answer.word("standing", chart.standing().name().toLowerCase(Locale.ROOT));
        switch (chart.standing()) {
            case NONE ->
                answer.note(
                        "%d readings: too few for limits; from ten on there are trial limits".formatted(values.size()));
            case TRIAL ->
                answer.note(("Trial limits from %d readings: false alarms may be many times the usual 0.27 %%, until "
                                + "there are 25")
                        .formatted(values.size()));
            default ->
                answer.note("These limits judge the process; whether a part is good is for its tolerance to say");
        }
        if (chart.meanMovingRange().signum() == 0) {
            answer.note("All readings are the same: the gauge is too coarse to show the process");
        } else if (Steadiness.unsteady(values)) {
            answer.note("The readings spread over half as much again as neighbours differ: they drift or jump, so look "
                    + "at the trend before the limits");
        }
        return answer.on(
                factors == Factors.PRINTED
                        ? "NIST/SEMATECH e-Handbook 6.3.2.2: centre ± 3 × mean moving range / 1.128, ranges up to "
                                + "3.267 × their mean"
                        : "NIST/SEMATECH e-Handbook 6.3.2.2 with the factors 2/√π and 1 + 3 d3/d2 in full");
    }
}
