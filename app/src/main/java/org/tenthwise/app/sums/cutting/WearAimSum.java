package org.tenthwise.app.sums.cutting;

import java.util.Set;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.cutting.WearAim;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;

/** Where to aim with a fresh edge, and when to set the tool anew. */
final class WearAimSum implements Sum {

    @Override
    public String name() {
        return "wear-aim";
    }

    @Override
    public Set<String> keys() {
        return Set.of("side", "lower", "upper", "sd", "expanded_uncertainty");
    }

    @Override
    public SumResult of(SumInput given) {
        Feature side = CutInputs.side(given);
        Length lower = CutInputs.lower(given);
        Length deviation = CutInputs.notNegative(given, "sd");
        Length uncertainty = CutInputs.notNegative(given, "expanded_uncertainty");
        WearAim aim = given.about(
                "sd",
                "three times that and the expanded uncertainty, kept from each limit, leave no room for wear",
                () -> WearAim.of(side, lower, CutInputs.upper(given), deviation, uncertainty));
        return SumResult.in(given.inUnit())
                .length("start", aim.start())
                .length("reset", aim.reset())
                .length("wear_room", aim.room())
                .note(
                        side == Feature.BORE
                                ? "An inside shrinks as the edge wears: start is near the upper limit."
                                : "An outside grows as the edge wears: start is near the lower limit.")
                .note("This counts on wear alone: look at the edge as the shop's rules say, for one that chips "
                        + "does not warn.")
                .on("Three standard deviations and the expanded uncertainty from each limit: common practice "
                        + "with charts of tool wear, ISO 14253-1");
    }
}
