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
            .on("printed", "full");

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
            case NONE -> answer.note("none", values.size());
            case TRIAL -> answer.note("trial", values.size());
            default -> answer.note("usual");
        }
        if (chart.meanMovingRange().signum() == 0) {
            answer.note("same");
        } else if (Steadiness.unsteady(values)) {
            answer.note("unsteady");
        }
        return answer.on(factors == Factors.PRINTED ? "printed" : "full");
    }
}
