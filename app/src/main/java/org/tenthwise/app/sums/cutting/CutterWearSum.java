package org.tenthwise.app.sums.cutting;

import java.util.Map;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.cutting.CutterWear;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;

/** The wear value of a milling cutter that brings a pocket or a boss to size. */
public final class CutterWearSum implements Sum {

    public static final Input<Feature> FEATURE =
            Input.choice("feature", "pocket", Feature.WIDTH, "boss", Feature.DIAMETER);
    public static final Input<Length> TARGET = Input.length("target");
    public static final Input<Length> MEASURED = Input.length("measured");
    public static final Input<Length> WEAR = Input.length("wear").optional();
    public static final Output<Length> WEAR_CHANGE =
            Output.length("wear_change").withSign();
    public static final Output<Length> WEAR_AFTER = Output.length("wear_after").sometimes();
    private static final SumDescription DESCRIPTION = SumDescription.named("cutter-wear")
            .takes(FEATURE, TARGET, MEASURED, WEAR)
            .gives(WEAR_CHANGE, WEAR_AFTER);

    private static final Map<String, Feature> FEATURES = Map.of("pocket", Feature.WIDTH, "boss", Feature.DIAMETER);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Length change = CutterWear.change(given.get(FEATURE), given.get(MEASURED), given.get(TARGET));
        SumResult.Writing answer = DESCRIPTION.in(given.inUnit()).put(WEAR_CHANGE, change);
        given.find(WEAR).ifPresent(wear -> answer.put(WEAR_AFTER, wear.plus(change)));
        return answer.note("register").done();
    }
}
