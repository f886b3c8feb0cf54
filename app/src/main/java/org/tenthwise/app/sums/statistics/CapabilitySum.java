package org.tenthwise.app.sums.statistics;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.app.sums.Sum;
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
final class CapabilitySum implements Sum {

    private static final int A_BAR_NOT_A_NUMBER = 30;
    private static final Map<CapabilityVerdict, String> WORDS = Map.of(
            CapabilityVerdict.SUPPORTS,
            "supports",
            CapabilityVerdict.CONTRADICTS,
            "contradicts",
            CapabilityVerdict.TOO_FEW,
            "too-few");

    @Override
    public String name() {
        return "capability";
    }

    @Override
    public Set<String> keys() {
        return Set.of(SampleInputs.VALUES, "n", "mean", "sd", "lower", "upper", "confidence", "required");
    }

    @Override
    public SumResult of(SumInput given) {
        Sample sample = SampleInputs.sample(given);
        BigDecimal confidence = SampleInputs.confidence(given);
        Optional<BigDecimal> required = given.figureIfGiven("required");
        Capability index = Capability.of(sample, given.figureIfGiven("lower"), given.figureIfGiven("upper"));
        Interval ofCpk = CapabilityInterval.ofCpk(index.cpk(), sample.n(), confidence.doubleValue());
        SumResult.Writing answer = SumResult.in(SampleInputs.unit(given));
        index.cp().ifPresent(cp -> answer.figure("cp", cp));
        answer.figure("cpk", index.cpk());
        index.cp().ifPresent(cp -> {
            Interval ofCp = CapabilityInterval.ofCp(cp, sample.n(), confidence.doubleValue());
            answer.figure("cp_low", ofCp.low()).figure("cp_high", ofCp.high());
        });
        answer.figure("cpk_low", ofCpk.low())
                .figure("cpk_high", ofCpk.high())
                .figure(
                        "one_sided_low",
                        CapabilityInterval.exactLowerBound(index.cpk(), sample.n(), confidence.doubleValue()));
        required.ifPresent(demand -> verdict(answer, sample.n(), ofCpk, demand, confidence));
        cautions(answer, sample, index, given.ifGiven(SampleInputs.VALUES, given::figures));
        used(answer, given);
        return answer.on("NIST/SEMATECH e-Handbook 6.1.6; Cp by chi-square, Cpk by Bissell (1990), one_sided_low by "
                + "non-central t "
                + "(Chou, Owen and Borrego 1990); ISO 22514-1 calls them Pp and Ppk until the process is "
                + "shown to be stable");
    }

    private static void verdict(
            SumResult.Writing answer, int n, Interval interval, BigDecimal required, BigDecimal confidence) {
        CapabilityVerdict verdict = CapabilityVerdict.of(interval, n, required);
        answer.word("verdict", WORDS.get(verdict));
        if (n < CapabilityVerdict.FEWEST_PARTS) {
            answer.note("%d parts: too few for any statement about the next ones".formatted(n));
        } else if (verdict == CapabilityVerdict.TOO_FEW) {
            answer.note("%d parts: with %s confidence the index lies between %s and %s; whether it is %s is not decided"
                    .formatted(
                            n,
                            Wording.percent(confidence),
                            Wording.about(interval.low()),
                            Wording.about(interval.high()),
                            required.toPlainString()));
        }
    }

    /** What few parts do tell: how much of the tolerance the one furthest out takes. */
    private static void used(SumResult.Writing answer, SumInput given) {
        if (given.has(SampleInputs.VALUES) && given.has("lower") && given.has("upper")) {
            BigDecimal share = ToleranceUsed.byFurthest(
                    given.figures(SampleInputs.VALUES), given.figure("lower"), given.figure("upper"));
            answer.note("The reading furthest from the middle of the tolerance takes %s of the way to a limit"
                    .formatted(Wording.atMostPercent(share)));
        }
    }

    private static void cautions(
            SumResult.Writing answer, Sample sample, Capability index, Optional<List<BigDecimal>> values) {
        if (index.cp().isEmpty()) {
            answer.note("With one limit there is no Cp; cpk is the index to that limit");
        }
        if (sample.n() >= CapabilityVerdict.FEWEST_PARTS && sample.n() < A_BAR_NOT_A_NUMBER) {
            answer.note("%d parts: go by the lower bound, not by the index; estimates settle from about 50 parts on"
                    .formatted(sample.n()));
        }
        if (values.isPresent() && Summary.of(values.get()).coarse()) {
            answer.note("Fewer than five different values: the gauge is too coarse, and sd is mostly its rounding");
        }
        if (values.isPresent() && Steadiness.unsteady(values.get())) {
            answer.note(
                    "The readings drift or jump: sd has the drift in it, and the index is that of the drifting series");
        }
    }
}
