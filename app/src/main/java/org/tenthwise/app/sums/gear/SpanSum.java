package org.tenthwise.app.sums.gear;

import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.gear.InvoluteTeeth;
import org.tenthwise.model.compute.gear.OverTeeth;
import org.tenthwise.model.quantity.Length;

/** The span over several teeth. */
public final class SpanSum implements Sum {

    public static final String NAME = "span";

    private static final int MOST = 10_000;

    public static final Input<Integer> OVER = Input.whole("over", 1, MOST);
    public static final Output<Length> SPAN = Output.length("span");
    public static final Output<Length> CONTACT_DIAMETER = Output.length("contact_diameter");
    private static final SumDescription DESCRIPTION =
            ToothInputs.named(NAME).takes(OVER).gives(SPAN, CONTACT_DIAMETER);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        InvoluteTeeth teeth = ToothInputs.of(given);
        int over = given.get(OVER);
        Length thickness = ToothInputs.thickness(given, teeth);
        OverTeeth several = given.about(OVER, () -> new OverTeeth(teeth, over));
        Length span = given.about(OVER, () -> several.span(thickness));
        SumResult.Writing answer =
                DESCRIPTION.in(given.inUnit()).put(SPAN, span).put(CONTACT_DIAMETER, several.contactDiameter(span));
        if (over != several.usual()) {
            answer.note("usual", several.usual());
        }
        if (!teeth.isSpur()) {
            answer.note("helical");
        }
        return answer.done();
    }
}
