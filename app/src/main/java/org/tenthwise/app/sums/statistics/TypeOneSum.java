package org.tenthwise.app.sums.statistics;

import java.math.BigDecimal;
import java.util.List;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.statistics.Sample;
import org.tenthwise.model.compute.statistics.TypeOneStudy;

/** One master read many times. */
public final class TypeOneSum implements Sum {

    public static final Input<BigDecimal> REFERENCE = Input.figure("reference");
    public static final Input<BigDecimal> TOLERANCE = Input.positive("tolerance");
    public static final Input<BigDecimal> SHARE = Input.positive("share").usually("0.2");
    public static final Input<BigDecimal> SPREAD = Input.positive("spread").usually("6");
    public static final Output<BigDecimal> MEAN = Output.full("mean");
    public static final Output<BigDecimal> SD = Output.full("sd");
    public static final Output<BigDecimal> BIAS = Output.full("bias");
    public static final Output<Double> T_BIAS = Output.figure("t_bias");
    public static final Output<Double> CG = Output.figure("cg");
    public static final Output<Double> CGK = Output.figure("cgk");
    private static final SumDescription DESCRIPTION = SumDescription.named("type-1")
            .takes(SampleInputs.VALUES, REFERENCE, TOLERANCE, SHARE, SPREAD)
            .gives(MEAN, SD, BIAS, T_BIAS, CG, CGK);

    private static final BigDecimal USUAL_SHARE = new BigDecimal("0.2");
    private static final BigDecimal USUAL_SPREAD = BigDecimal.valueOf(6);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        List<BigDecimal> values = given.get(SampleInputs.VALUES);
        Sample sample = given.about(SampleInputs.VALUES, () -> Sample.of(values));
        BigDecimal share = given.find(SHARE).orElse(USUAL_SHARE);
        BigDecimal spread = given.find(SPREAD).orElse(USUAL_SPREAD);
        TypeOneStudy study = TypeOneStudy.of(
                sample, given.get(REFERENCE), given.get(TOLERANCE), share.doubleValue(), spread.doubleValue());
        SumResult.Writing answer = DESCRIPTION
                .in(given.anyUnit())
                .put(MEAN, sample.mean())
                .put(SD, sample.sd())
                .put(BIAS, study.bias())
                .put(T_BIAS, study.tOfBias())
                .put(CG, study.cg())
                .put(CGK, study.cgk());
        if (sample.n() < TypeOneStudy.USUAL_READINGS) {
            answer.note("few", sample.n(), TypeOneStudy.USUAL_READINGS);
        }
        return answer.on(DESCRIPTION.said("basis").with(SHARE.key(), share).with(SPREAD.key(), spread));
    }
}
