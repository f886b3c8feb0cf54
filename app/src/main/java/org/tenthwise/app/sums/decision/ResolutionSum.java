package org.tenthwise.app.sums.decision;

import java.util.Set;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.uncertainty.RuleOfTen;
import org.tenthwise.model.quantity.Length;

/** Whether a division is fine enough for a tolerance. */
final class ResolutionSum implements Sum {

    @Override
    public String name() {
        return "resolution";
    }

    @Override
    public Set<String> keys() {
        return Set.of("lower", "upper", "division");
    }

    @Override
    public SumResult of(SumInput given) {
        Length lower = given.length("lower");
        Length upper = given.length("upper");
        if (!upper.isAbove(lower)) {
            throw new CannotAnswer(
                    "upper",
                    "lower is %s and upper is %s: the upper limit must be above the lower one"
                            .formatted(given.text("lower"), given.text("upper")));
        }
        RuleOfTen found = RuleOfTen.of(lower, upper, given.positiveLength("division"));
        SumResult.Writing answer = SumResult.in(given.inUnit())
                .exact("share", found.share())
                .length("tenth", found.tenth())
                .word("verdict", found.fineEnough() ? "fine-enough" : "too-coarse");
        if (!found.fineEnough()) {
            answer.note("One division is more than a tenth of the tolerance: take a finer gauge.");
        }
        return answer.note("The whole tolerance, upper less lower, is meant. The rule is about the display, not about "
                        + "the uncertainty, which is larger.")
                .on("common practice, rule of ten; GB/T 3177");
    }
}
