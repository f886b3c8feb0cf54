package org.tenthwise.app.sums.decision;

import java.math.BigDecimal;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.uncertainty.RoundingMethod;

/** A figure against limits, as it stands and rounded first. */
public final class RoundingMethodSum implements Sum {

    public static final Input<BigDecimal> VALUE = Input.figure("value");
    public static final Input<BigDecimal> LOWER = Input.figure("lower").optional();
    public static final Input<BigDecimal> UPPER = Input.figure("upper").optional();
    public static final Input<BigDecimal> PLACE = Input.positive("place").optional();
    public static final Output<String> VERDICT_ABSOLUTE = Output.word("verdict_absolute", "pass", "fail");
    public static final Output<String> VERDICT_ROUNDED = Output.word("verdict_rounded", "pass", "fail");
    public static final Output<BigDecimal> ROUNDED = Output.exact("rounded");
    private static final SumDescription DESCRIPTION = SumDescription.named("rounding-method")
            .takes(VALUE, LOWER, UPPER, PLACE)
            .gives(VERDICT_ABSOLUTE, VERDICT_ROUNDED, ROUNDED);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        RoundingMethod found =
                RoundingMethod.of(given.get(VALUE), given.find(LOWER), given.find(UPPER), given.find(PLACE));
        SumResult.Writing answer = DESCRIPTION
                .in(given.anyUnit())
                .put(VERDICT_ABSOLUTE, word(found.absolute()))
                .put(VERDICT_ROUNDED, word(found.byRounding()))
                .put(ROUNDED, found.rounded());
        if (found.absolute() != found.byRounding()) {
            answer.note("differ");
        }
        return answer.done();
    }

    private static String word(boolean conforms) {
        return conforms ? "pass" : "fail";
    }
}
