package org.tenthwise.app.sums.statistics;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.statistics.Sample;
import org.tenthwise.model.compute.statistics.TypeOneStudy;

/** One master read many times. */
final class TypeOneSum implements Sum {

    private static final BigDecimal USUAL_SHARE = new BigDecimal("0.2");
    private static final BigDecimal USUAL_SPREAD = BigDecimal.valueOf(6);

    @Override
    public String name() {
        return "type-1";
    }

    @Override
    public Set<String> keys() {
        return Set.of(SampleInputs.VALUES, "reference", "tolerance", "share", "spread");
    }

    @Override
    public SumResult of(SumInput given) {
        List<BigDecimal> values = given.figures(SampleInputs.VALUES);
        Sample sample = given.about(SampleInputs.VALUES, () -> Sample.of(values));
        BigDecimal share = given.ifGiven("share", given::positive).orElse(USUAL_SHARE);
        BigDecimal spread = given.ifGiven("spread", given::positive).orElse(USUAL_SPREAD);
        TypeOneStudy study = TypeOneStudy.of(
                sample,
                given.figure("reference"),
                given.positive("tolerance"),
                share.doubleValue(),
                spread.doubleValue());
        SumResult.Writing answer = SumResult.in(SampleInputs.unit(given))
                .exact("mean", Wording.full(sample.mean()))
                .exact("sd", Wording.full(sample.sd()))
                .exact("bias", Wording.full(study.bias()))
                .figure("t_bias", study.tOfBias())
                .figure("cg", study.cg())
                .figure("cgk", study.cgk());
        if (sample.n() < TypeOneStudy.USUAL_READINGS) {
            answer.note(
                    "%d readings: a study should have %d or more".formatted(sample.n(), TypeOneStudy.USUAL_READINGS));
        }
        return answer.on("ISO 22514-7, type-1 study; cg = %s T / (%s s)"
                .formatted(share.toPlainString(), spread.toPlainString()));
    }
}
