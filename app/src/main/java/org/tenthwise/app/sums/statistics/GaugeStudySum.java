package org.tenthwise.app.sums.statistics;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.statistics.GaugeByRange;
import org.tenthwise.model.compute.statistics.GaugeByVariance;
import org.tenthwise.model.compute.statistics.GaugeReadings;
import org.tenthwise.model.compute.statistics.GaugeStudy;

/** How much of the spread is the gauge's. */
final class GaugeStudySum implements Sum {

    private static final Map<String, Method> METHODS = Map.of("variance", Method.VARIANCE, "range", Method.RANGE);

    private enum Method {
        VARIANCE,
        RANGE
    }

    @Override
    public String name() {
        return "gauge-study";
    }

    @Override
    public Set<String> keys() {
        return Set.of("readings", "tolerance", "method");
    }

    @Override
    public SumResult of(SumInput given) {
        Method method = given.choice("method", METHODS);
        List<List<List<BigDecimal>>> groups = given.groups("readings");
        GaugeReadings readings = given.about("readings", () -> new GaugeReadings(groups));
        GaugeStudy study = given.about(
                "readings", () -> method == Method.VARIANCE ? GaugeByVariance.of(readings) : GaugeByRange.of(readings));
        SumResult.Writing answer = SumResult.in(SampleInputs.unit(given))
                .figure("repeatability", study.repeatability())
                .figure("reproducibility", study.reproducibility())
                .figure("gauge", study.gauge())
                .figure("part", study.part())
                .figure("total", study.total());
        study.percentOfTotal().ifPresent(percent -> answer.figure("percent_of_total", percent));
        given.ifGiven("tolerance", given::positive)
                .ifPresent(tolerance ->
                        answer.figure("percent_of_tolerance", study.percentOfTolerance(tolerance.doubleValue())));
        study.distinct().ifPresent(distinct -> answer.figure("distinct", distinct));
        remarks(answer, study, readings, given);
        return answer.on(
                method == Method.VARIANCE
                        ? "Measurement Systems Analysis reference manual, 4th ed., analysis of variance; "
                                + "interaction pooled where its probability is above 0.25; distinct = 1.41 part / gauge"
                        : "Measurement Systems Analysis reference manual, 4th ed., average and range, factors to "
                                + "four places; distinct = 1.41 part / gauge");
    }

    private static void remarks(SumResult.Writing answer, GaugeStudy study, GaugeReadings readings, SumInput given) {
        if (study.interaction() == GaugeStudy.Interaction.POOLED) {
            answer.note("Persons and parts have no significant interaction: it is counted with the repeatability");
        } else if (study.interaction() == GaugeStudy.Interaction.KEPT) {
            answer.note("Some persons read some parts differently: that is counted with the reproducibility");
        }
        if (readings.byPart().get(0).size() == 1) {
            answer.note("One person read the parts: there is no reproducibility to find");
        }
        if (study.cutAtNought()) {
            answer.note("A variance came out below nought and counts as nought: there are too few readings to tell it "
                    + "from nought");
        }
        if (study.total() == 0) {
            answer.note("All readings are the same: the gauge is too coarse for a study");
        } else if (study.gauge() == 0) {
            answer.note(
                    "No repeat differs: the gauge is too coarse to show its own spread, and distinct has no number");
        } else if (given.has("tolerance")) {
            answer.note("Common practice calls a gauge that takes up to 10 % of the tolerance good, "
                    + "up to 30 % usable where the part allows it, and more not usable");
        } else {
            answer.note("The percentage of the total hangs on which parts were chosen; give tolerance for the one that "
                    + "matters to the parts");
        }
    }
}
