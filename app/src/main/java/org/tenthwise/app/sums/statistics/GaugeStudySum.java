package org.tenthwise.app.sums.statistics;

import java.math.BigDecimal;
import java.util.List;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.statistics.GaugeByRange;
import org.tenthwise.model.compute.statistics.GaugeByVariance;
import org.tenthwise.model.compute.statistics.GaugeReadings;
import org.tenthwise.model.compute.statistics.GaugeStudy;

/** How much of the spread is the gauge's. */
public final class GaugeStudySum implements Sum {

    /** How the spread is taken apart. */
    public enum StudyMethod {
        VARIANCE,
        RANGE
    }

    public static final Input<List<List<List<BigDecimal>>>> READINGS = Input.groups("readings");
    public static final Input<BigDecimal> TOLERANCE =
            Input.positive("tolerance").optional();
    public static final Input<StudyMethod> METHOD = Input.choice("method", StudyMethod.values());
    public static final Output<Double> REPEATABILITY = Output.figure("repeatability");
    public static final Output<Double> REPRODUCIBILITY = Output.figure("reproducibility");
    public static final Output<Double> GAUGE = Output.figure("gauge");
    public static final Output<Double> PART = Output.figure("part");
    public static final Output<Double> TOTAL = Output.figure("total");
    public static final Output<Double> PERCENT_OF_TOTAL =
            Output.figure("percent_of_total").sometimes();
    public static final Output<Double> PERCENT_OF_TOLERANCE =
            Output.figure("percent_of_tolerance").sometimes();
    public static final Output<Double> DISTINCT = Output.figure("distinct").sometimes();
    private static final SumDescription DESCRIPTION = SumDescription.named("gauge-study")
            .takes(READINGS, TOLERANCE, METHOD)
            .gives(REPEATABILITY, REPRODUCIBILITY, GAUGE, PART, TOTAL, PERCENT_OF_TOTAL, PERCENT_OF_TOLERANCE, DISTINCT)
            .on("variance", "range");

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        StudyMethod method = given.get(METHOD);
        List<List<List<BigDecimal>>> groups = given.get(READINGS);
        GaugeReadings readings = given.about(READINGS, () -> new GaugeReadings(groups));
        GaugeStudy study = given.about(
                READINGS,
                () -> method == StudyMethod.VARIANCE ? GaugeByVariance.of(readings) : GaugeByRange.of(readings));
        SumResult.Writing answer = DESCRIPTION
                .in(given.anyUnit())
                .put(REPEATABILITY, study.repeatability())
                .put(REPRODUCIBILITY, study.reproducibility())
                .put(GAUGE, study.gauge())
                .put(PART, study.part())
                .put(TOTAL, study.total());
        study.percentOfTotal().ifPresent(percent -> answer.put(PERCENT_OF_TOTAL, percent));
        given.find(TOLERANCE)
                .ifPresent(tolerance ->
                        answer.put(PERCENT_OF_TOLERANCE, study.percentOfTolerance(tolerance.doubleValue())));
        study.distinct().ifPresent(distinct -> answer.put(DISTINCT, distinct));
        remarks(answer, study, readings, given);
        return answer.on(method == StudyMethod.VARIANCE ? "variance" : "range");
    }

    private static void remarks(SumResult.Writing answer, GaugeStudy study, GaugeReadings readings, SumInput given) {
        if (study.interaction() == GaugeStudy.Interaction.POOLED) {
            answer.note("pooled");
        } else if (study.interaction() == GaugeStudy.Interaction.KEPT) {
            answer.note("kept");
        }
        if (readings.byPart().get(0).size() == 1) {
            answer.note("one-person");
        }
        if (study.cutAtZero()) {
            answer.note("cut");
        }
        if (study.total() == 0) {
            answer.note("same");
        } else if (study.gauge() == 0) {
            answer.note("no-repeat");
        } else if (given.has(TOLERANCE)) {
            answer.note("practice");
        } else {
            answer.note("of-total");
        }
    }
}
