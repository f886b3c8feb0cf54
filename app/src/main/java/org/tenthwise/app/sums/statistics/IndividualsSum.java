package org.tenthwise.app.sums.statistics;

import java.math.BigDecimal;
import java.util.List;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.statistics.Individuals;
import org.tenthwise.model.compute.statistics.Individuals.Factors;
import org.tenthwise.model.compute.statistics.Individuals.LimitsStanding;
import org.tenthwise.model.compute.statistics.Steadiness;

/** Limits of a chart of single readings in the order they were made. */
public final class IndividualsSum implements Sum {

    public static final Input<Factors> FACTORS =
            Input.choice("factors", Factors.values()).usually("`printed`");
    public static final Output<BigDecimal> CENTRE = Output.full("centre");
    public static final Output<BigDecimal> MEAN_MOVING_RANGE = Output.full("mean_moving_range");
    public static final Output<BigDecimal> UPPER = Output.full("upper").sometimes();
    public static final Output<BigDecimal> LOWER = Output.full("lower").sometimes();
    public static final Output<BigDecimal> MOVING_RANGE_UPPER =
            Output.full("moving_range_upper").sometimes();
    public static final Output<LimitsStanding> STANDING = Output.word("standing", LimitsStanding.values());
    private static final SumDescription DESCRIPTION = SumDescription.named("individuals")
            .takes(SampleInputs.VALUES, FACTORS)
            .gives(CENTRE, MEAN_MOVING_RANGE, UPPER, LOWER, MOVING_RANGE_UPPER, STANDING)
            .on(
                    "NIST/SEMATECH e-Handbook 6.3.2.2: centre ± 3 × mean moving range / 1.128, ranges up to "
                            + "3.267 × their mean",
                    "NIST/SEMATECH e-Handbook 6.3.2.2 with the factors 2/√π and 1 + 3 d3/d2 in full");

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        List<BigDecimal> values = given.get(SampleInputs.VALUES);
        Factors factors = given.find(FACTORS).orElse(Factors.PRINTED);
        Individuals chart = given.about(SampleInputs.VALUES, () -> Individuals.of(values, factors));
        SumResult.Writing answer = DESCRIPTION
                .in(given.anyUnit())
                .put(CENTRE, chart.centre())
                .put(MEAN_MOVING_RANGE, chart.meanMovingRange());
        chart.limits().ifPresent(limits -> answer.put(UPPER, limits.upper())
                .put(LOWER, limits.lower())
                .put(MOVING_RANGE_UPPER, limits.movingRangeUpper()));
        answer.put(STANDING, chart.standing());
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
        return answer.on(DESCRIPTION.basis().get(factors == Factors.PRINTED ? 0 : 1));
    }
}
