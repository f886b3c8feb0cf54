package org.tenthwise.app.sums.cutting;

import java.util.Map;
import java.util.Set;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.cutting.CutterWear;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;

/** The wear value of a milling cutter that brings a pocket or a boss to size. */
final class CutterWearSum implements Sum {

    private static final Map<String, Feature> FEATURES = Map.of("pocket", Feature.WIDTH, "boss", Feature.DIAMETER);

    @Override
    public String name() {
        return "cutter-wear";
    }

    @Override
    public Set<String> keys() {
        return Set.of("feature", "target", "measured", "wear");
    }

    @Override
    public SumResult of(SumInput given) {
        Length change =
                CutterWear.change(given.choice("feature", FEATURES), given.length("measured"), given.length("target"));
        SumResult.Writing answer = SumResult.in(given.inUnit()).length("wear_change", change);
        given.lengthIfGiven("wear").ifPresent(wear -> answer.length("wear_after", wear.plus(change)));
        return answer.note("For a register of the cutter's radius that is added to it: a smaller value cuts nearer to "
                        + "the wall, a pocket wider and a boss smaller.")
                .on("Half of the error of the width for each wall: common practice with cutter radius compensation");
    }
}
