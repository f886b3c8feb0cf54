package org.tenthwise.app.sums.decision;

import java.math.BigDecimal;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.uncertainty.RuleOfTen;
import org.tenthwise.model.quantity.Length;

/** Whether a division is fine enough for a tolerance. */
public final class ResolutionSum implements Sum {

    public static final Input<Length> LOWER = Input.length("lower");
    public static final Input<Length> UPPER = Input.length("upper");
    public static final Input<Length> DIVISION = Input.positiveLength("division");
    public static final Output<BigDecimal> SHARE = Output.exact("share");
    public static final Output<Length> TENTH = Output.length("tenth");
    public static final Output<String> VERDICT = Output.word("verdict", "fine-enough", "too-coarse");
    private static final SumDescription DESCRIPTION =
            SumDescription.named("resolution").takes(LOWER, UPPER, DIVISION).gives(SHARE, TENTH, VERDICT);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Length lower = given.get(LOWER);
        Length upper = given.get(UPPER);
        if (!upper.isAbove(lower)) {
            throw new CannotAnswer(UPPER, "not-above", given.text(LOWER), given.text(UPPER));
        }
        RuleOfTen found = RuleOfTen.of(lower, upper, given.get(DIVISION));
        SumResult.Writing answer = DESCRIPTION
                .in(given.inUnit())
                .put(SHARE, found.share())
                .put(TENTH, found.tenth())
                .put(VERDICT, found.fineEnough() ? "fine-enough" : "too-coarse");
        if (!found.fineEnough()) {
            answer.note("too-coarse");
        }
        return answer.note("whole").done();
    }
}
