package org.tenthwise.app.sums.statistics;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.statistics.Capability;
import org.tenthwise.model.compute.statistics.CapabilityInterval;
import org.tenthwise.model.compute.statistics.CapabilityVerdict;
import org.tenthwise.model.compute.statistics.Interval;
import org.tenthwise.model.compute.statistics.Sample;
import org.tenthwise.model.compute.statistics.Steadiness;
import org.tenthwise.model.compute.statistics.Summary;
import org.tenthwise.model.compute.statistics.ToleranceUsed;

/** What so many parts show of an index of capability, and what they do not. */
public final class CapabilitySum implements Sum {

    public static final Input<BigDecimal> LOWER = Input.figure("lower").optional();
    public static final Input<BigDecimal> UPPER = Input.figure("upper").optional();
    public static final Input<BigDecimal> REQUIRED = Input.figure("required").optional();
    public static final Output<Double> CP = Output.figure("cp").sometimes();
    public static final Output<Double> CPK = Output.figure("cpk");
    public static final Output<Double> CP_LOW = Output.figure("cp_low").sometimes();
    public static final Output<Double> CP_HIGH = Output.figure("cp_high").sometimes();
    public static final Output<Double> CPK_LOW = Output.figure("cpk_low");
    public static final Output<Double> CPK_HIGH = Output.figure("cpk_high");
    public static final Output<Double> ONE_SIDED_LOW = Output.figure("one_sided_low");
    public static final Output<CapabilityVerdict> VERDICT =
            Output.word("verdict", CapabilityVerdict.values()).sometimes();
    private static final SumDescription DESCRIPTION = SumDescription.named("capability")
            .takesOneOf(SampleInputs.VALUES, SampleInputs.N)
            .takes(SampleInputs.MEAN, SampleInputs.SD, LOWER, UPPER, SampleInputs.CONFIDENCE, REQUIRED)
            .gives(CP, CPK, CP_LOW, CP_HIGH, CPK_LOW, CPK_HIGH, ONE_SIDED_LOW, VERDICT);

    private static final int A_BAR_NOT_A_NUMBER = 30;

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Sample sample = SampleInputs.sample(given);
        BigDecimal confidence = given.find(SampleInputs.CONFIDENCE).orElse(SampleInputs.USUAL_CONFIDENCE);
        Optional<BigDecimal> required = given.find(REQUIRED);
        Capability index = Capability.of(sample, given.find(LOWER), given.find(UPPER));
        Interval ofCpk = CapabilityInterval.ofCpk(index.cpk(), sample.n(), confidence.doubleValue());
        SumResult.Writing answer = DESCRIPTION.in(given.anyUnit());
        index.cp().ifPresent(cp -> answer.put(CP, cp));
        answer.put(CPK, index.cpk());
        index.cp().ifPresent(cp -> {
            Interval ofCp = CapabilityInterval.ofCp(cp, sample.n(), confidence.doubleValue());
            answer.put(CP_LOW, ofCp.low()).put(CP_HIGH, ofCp.high());
        });
        answer.put(CPK_LOW, ofCpk.low())
                .put(CPK_HIGH, ofCpk.high())
                .put(
                        ONE_SIDED_LOW,
                        CapabilityInterval.exactLowerBound(index.cpk(), sample.n(), confidence.doubleValue()));
        required.ifPresent(demand -> verdict(answer, sample.n(), ofCpk, demand, confidence));
        cautions(answer, sample, index, given.find(SampleInputs.VALUES));
        used(answer, given);
        return answer.done();
    }

    private static void verdict(
            SumResult.Writing answer, int n, Interval interval, BigDecimal required, BigDecimal confidence) {
        CapabilityVerdict verdict = CapabilityVerdict.of(interval, n, required);
        answer.put(VERDICT, verdict);
        if (n < CapabilityVerdict.FEWEST_PARTS) {
            answer.note("too-few", n);
        } else if (verdict == CapabilityVerdict.TOO_FEW) {
            answer.note(
                    "open",
                    n,
                    Wording.percent(confidence),
                    Wording.about(interval.low()),
                    Wording.about(interval.high()),
                    required);
        }
    }

    /** What few parts do tell: how much of the tolerance the one furthest out takes. */
    private static void used(SumResult.Writing answer, SumInput given) {
        if (given.has(SampleInputs.VALUES) && given.has(LOWER) && given.has(UPPER)) {
            BigDecimal share =
                    ToleranceUsed.byFurthest(given.get(SampleInputs.VALUES), given.get(LOWER), given.get(UPPER));
            answer.note("used", Wording.atMostPercent(share));
        }
    }

    private static void cautions(
            SumResult.Writing answer, Sample sample, Capability index, Optional<List<BigDecimal>> values) {
        if (index.cp().isEmpty()) {
            answer.note("one-limit");
        }
        if (sample.n() >= CapabilityVerdict.FEWEST_PARTS && sample.n() < A_BAR_NOT_A_NUMBER) {
            answer.note("few", sample.n());
        }
        if (values.isPresent() && Summary.of(values.get()).coarse()) {
            answer.note("coarse");
        }
        if (values.isPresent() && Steadiness.unsteady(values.get())) {
            answer.note("unsteady");
        }
    }
}
