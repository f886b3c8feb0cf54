package org.tenthwise.app.sums.cutting;

import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.cutting.WearAim;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;

/** Where to aim with a fresh edge, and when to set the tool anew. */
public final class WearAimSum implements Sum {

    public static final Input<Length> SD = Input.lengthNotNegative("sd");
    public static final Input<Length> EXPANDED_UNCERTAINTY = Input.lengthNotNegative("expanded_uncertainty");
    public static final Output<Length> START = Output.length("start");
    public static final Output<Length> RESET = Output.length("reset");
    public static final Output<Length> WEAR_ROOM = Output.length("wear_room");
    private static final SumDescription DESCRIPTION = SumDescription.named("wear-aim")
            .takes(CutInputs.SIDE, CutInputs.LOWER, CutInputs.UPPER, SD, EXPANDED_UNCERTAINTY)
            .gives(START, RESET, WEAR_ROOM);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Feature side = given.get(CutInputs.SIDE);
        Length lower = CutInputs.lower(given);
        Length deviation = given.get(SD);
        Length uncertainty = given.get(EXPANDED_UNCERTAINTY);
        WearAim aim = given.about(
                SD, "no-room", () -> WearAim.of(side, lower, given.get(CutInputs.UPPER), deviation, uncertainty));
        return DESCRIPTION
                .in(given.inUnit())
                .put(START, aim.start())
                .put(RESET, aim.reset())
                .put(WEAR_ROOM, aim.room())
                .note(side == Feature.BORE ? "inside" : "outside")
                .note("edge")
                .done();
    }
}
