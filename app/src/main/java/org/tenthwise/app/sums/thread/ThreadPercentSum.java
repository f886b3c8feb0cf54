package org.tenthwise.app.sums.thread;

import java.math.BigDecimal;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.drilling.ThreadEngagement;
import org.tenthwise.model.quantity.Length;

/** How much thread a drilled hole leaves for the tap. */
public final class ThreadPercentSum implements Sum {

    public static final String NAME = "thread-percent";
    public static final Input<Length> MAJOR = Input.positiveLength("major");
    public static final Input<Length> DRILL = Input.positiveLength("drill");
    public static final Output<Double> PERCENT = Output.figure("percent");
    private static final BigDecimal FULL = BigDecimal.valueOf(100);
    private static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takes(MAJOR, DRILL)
            .takesOneOf(DesignationInputs.PITCH, DesignationInputs.TPI)
            .gives(PERCENT);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Length major = given.get(MAJOR);
        Length drill = given.get(DRILL);
        if (drill.isAbove(major)) {
            throw new CannotAnswer(DRILL, "above-major", given.text(DRILL), given.text(MAJOR));
        }
        BigDecimal percent = ThreadEngagement.percent(major, drill, DesignationInputs.pitch(given));
        SumResult.Writing answer = DESCRIPTION.in(given.inUnit()).put(PERCENT, percent.doubleValue());
        if (percent.compareTo(FULL) > 0) {
            answer.note("above-full");
        }
        return answer.note("full").note("minor").done();
    }
}
