package org.tenthwise.app.sums.fit;

import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.zone.Delta;
import org.tenthwise.model.compute.zone.Grade;
import org.tenthwise.model.compute.zone.StandardTolerance;
import org.tenthwise.model.compute.zone.StandardToleranceFactor;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** How wide a grade is at a size, and what the standard builds its tables from there. */
public final class StandardToleranceSum implements Sum {

    public static final Input<String> GRADE = Input.name("grade").bounded("bound");
    public static final Output<Length> TOLERANCE = Output.length("tolerance");
    public static final Output<Length> STEP_OVER = Output.length("step_over");
    public static final Output<Length> STEP_UP_TO = Output.length("step_up_to");
    public static final Output<Length> FACTOR = Output.length("factor");
    public static final Output<Length> DELTA = Output.length("delta").sometimes();
    private static final SumDescription DESCRIPTION = SumDescription.named("standard-tolerance")
            .takes(ZoneInputs.DIAMETER, GRADE)
            .gives(TOLERANCE, STEP_OVER, STEP_UP_TO, FACTOR, DELTA);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Length diameter = ZoneInputs.diameter(given);
        String name = given.text(GRADE);
        Grade grade = Grade.ofNumber(name.startsWith("IT") ? name.substring(2) : name)
                .orElseThrow(() -> new CannotAnswer(GRADE, "unknown", GRADE, name));
        SumResult.Writing answer = DESCRIPTION
                .in(Unit.MILLIMETRE)
                .put(TOLERANCE, given.about(GRADE, () -> StandardTolerance.of(grade, diameter)))
                .put(STEP_OVER, StandardTolerance.stepOver(diameter))
                .put(STEP_UP_TO, StandardTolerance.stepUpTo(diameter))
                .put(FACTOR, StandardToleranceFactor.at(diameter));
        if (Delta.isFor(grade)) {
            answer.put(DELTA, Delta.of(grade, diameter));
        }
        return answer.note("factor").done();
    }
}
