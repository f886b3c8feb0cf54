package org.tenthwise.app.sums.gauge;

import java.util.Set;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.comparison.Rocking;

/** A bore gauge tilted along the bore. */
final class RockingSum implements Sum {

    @Override
    public String name() {
        return "rocking";
    }

    @Override
    public Set<String> keys() {
        return Set.of("diameter", "tilt");
    }

    @Override
    public SumResult of(SumInput given) {
        return SumResult.in(given.inUnit())
                .length("reads_more", Rocking.readsMore(given.positiveLength("diameter"), given.figure("tilt")))
                .note("Rock the gauge through square and read where the needle turns back: there the tilt is nought.")
                .on("geometry; common practice");
    }
}
