package org.tenthwise.app.sums.chain;

import java.util.List;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.chain.ToleranceChain;
import org.tenthwise.model.quantity.Length;

/** What the tolerances of sizes in a row come to. */
public final class StackSum implements Sum {

    public static final String NAME = "stack";
    public static final Input<List<Length>> TOLERANCES =
            Input.lengths("tolerances").bounded("bound");
    public static final Input<Length> GAP = Input.length("gap").optional();
    public static final Output<Length> WORST = Output.length("worst");
    public static final Output<Length> ROOT_SUM_SQUARE = Output.length("root_sum_square");
    public static final Output<Length> WORST_LEAST =
            Output.length("worst_least").sometimes();
    public static final Output<Length> WORST_GREATEST =
            Output.length("worst_greatest").sometimes();
    public static final Output<Length> RSS_LEAST = Output.length("rss_least").sometimes();
    public static final Output<Length> RSS_GREATEST =
            Output.length("rss_greatest").sometimes();
    private static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takes(TOLERANCES, GAP)
            .gives(WORST, ROOT_SUM_SQUARE, WORST_LEAST, WORST_GREATEST, RSS_LEAST, RSS_GREATEST);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        List<Length> tolerances = given.get(TOLERANCES);
        tolerances.stream().filter(each -> each.signum() < 0).findFirst().ifPresent(each -> {
            throw new CannotAnswer(
                    TOLERANCES, "negative", each.in(given.inUnit()).toPlainString());
        });
        ToleranceChain chain = ToleranceChain.of(tolerances);
        SumResult.Writing answer =
                DESCRIPTION.in(given.inUnit()).put(WORST, chain.worst()).put(ROOT_SUM_SQUARE, chain.rootSumSquare());
        given.find(GAP).ifPresent(gap -> gap(answer, gap, chain));
        return answer.note("planning").done();
    }

    private static void gap(SumResult.Writing answer, Length gap, ToleranceChain chain) {
        answer.put(WORST_LEAST, gap.minus(chain.worst()))
                .put(WORST_GREATEST, gap.plus(chain.worst()))
                .put(RSS_LEAST, gap.minus(chain.rootSumSquare()))
                .put(RSS_GREATEST, gap.plus(chain.rootSumSquare()));
        if (gap.isBelow(chain.worst())) {
            answer.note("interference");
        }
    }
}
