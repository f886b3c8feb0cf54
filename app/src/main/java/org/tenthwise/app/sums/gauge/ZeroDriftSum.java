package org.tenthwise.app.sums.gauge;

import java.util.Set;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.comparison.ZeroDrift;

/** The master read again after the work. */
final class ZeroDriftSum implements Sum {

    @Override
    public String name() {
        return "zero-drift";
    }

    @Override
    public Set<String> keys() {
        return Set.of("zero", "zero_again", "division");
    }

    @Override
    public SumResult of(SumInput given) {
        ZeroDrift found =
                ZeroDrift.between(given.length("zero"), given.length("zero_again"), given.positiveLength("division"));
        SumResult.Writing answer = SumResult.in(given.inUnit())
                .length("drift", found.drift())
                .word("verdict", found.readAgain() ? "read-again" : "stands");
        if (found.readAgain()) {
            answer.note("The zero has gone by more than one division: set the gauge on the master again and repeat the "
                    + "readings.");
        }
        return answer.on("common practice");
    }
}
