package org.tenthwise.app.sums.gauge;

import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.comparison.ZeroDrift;
import org.tenthwise.model.quantity.Length;

/** The master read again after the work. */
public final class ZeroDriftSum implements Sum {

    public static final Input<Length> ZERO = Input.length("zero");
    public static final Input<Length> ZERO_AGAIN = Input.length("zero_again");
    public static final Input<Length> DIVISION = Input.positiveLength("division");
    public static final Output<Length> DRIFT = Output.length("drift");
    public static final Output<String> VERDICT = Output.word("verdict", "stands", "read-again");
    private static final SumDescription DESCRIPTION =
            SumDescription.named("zero-drift").takes(ZERO, ZERO_AGAIN, DIVISION).gives(DRIFT, VERDICT);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        ZeroDrift found = ZeroDrift.between(given.get(ZERO), given.get(ZERO_AGAIN), given.get(DIVISION));
        SumResult.Writing answer = DESCRIPTION
                .in(given.inUnit())
                .put(DRIFT, found.drift())
                .put(VERDICT, found.readAgain() ? "read-again" : "stands");
        if (found.readAgain()) {
            answer.note("again");
        }
        return answer.done();
    }
}
