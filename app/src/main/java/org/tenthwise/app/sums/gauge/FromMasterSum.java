package org.tenthwise.app.sums.gauge;

import java.util.Map;
import java.util.Set;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.comparison.FromMaster;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.quantity.Length;

/** A size by comparison with a master. */
final class FromMasterSum implements Sum {

    static final Map<String, ReadingDirection> SENSES = Map.of(
            "1",
            ReadingDirection.RISES_WITH_SIZE,
            "+1",
            ReadingDirection.RISES_WITH_SIZE,
            "-1",
            ReadingDirection.FALLS_WITH_SIZE);

    @Override
    public String name() {
        return "from-master";
    }

    @Override
    public Set<String> keys() {
        return Set.of("master", "reading", "zero", "sense");
    }

    @Override
    public SumResult of(SumInput given) {
        Length size = FromMaster.size(
                given.positiveLength("master"),
                given.choice("sense", SENSES),
                given.length("reading"),
                given.lengthIfGiven("zero").orElse(Length.ZERO));
        SumResult.Writing answer = SumResult.in(given.inUnit()).length("size", size);
        if (!given.has("zero")) {
            answer.note("No zero was given: the gauge is taken to have read nought on the master.");
        }
        return answer.note("The master counts with the size on its certificate, not with its nominal one.")
                .on("common practice; comparison with a standard as in JCGM 100:2008, H.1");
    }
}
