package org.tenthwise.app.sums.fit;

import java.util.Set;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.zone.Delta;
import org.tenthwise.model.compute.zone.Grade;
import org.tenthwise.model.compute.zone.StandardTolerance;
import org.tenthwise.model.compute.zone.StandardToleranceFactor;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** How wide a grade is at a size, and what the standard builds its tables from there. */
final class StandardToleranceSum implements Sum {

    private static final String GRADE = "grade";

    @Override
    public String name() {
        return "standard-tolerance";
    }

    @Override
    public Set<String> keys() {
        return Set.of(ZoneInputs.DIAMETER, GRADE);
    }

    @Override
    public SumResult of(SumInput given) {
        Length diameter = ZoneInputs.diameter(given);
        String name = given.text(GRADE);
        Grade grade = Grade.ofNumber(name.startsWith("IT") ? name.substring(2) : name)
                .orElseThrow(() ->
                        new CannotAnswer(GRADE, "%s is \"%s\": it is IT01, IT0 or IT1 to IT18".formatted(GRADE, name)));
        SumResult.Writing answer = SumResult.in(Unit.MILLIMETRE)
                .length("tolerance", given.about(GRADE, () -> StandardTolerance.of(grade, diameter)))
                .length("step_over", StandardTolerance.stepOver(diameter))
                .length("step_up_to", StandardTolerance.stepUpTo(diameter))
                .length("factor", StandardToleranceFactor.at(diameter));
        if (Delta.isFor(grade)) {
            answer.length("delta", Delta.of(grade, diameter));
        }
        return answer.note("factor is i of the standard, from which its table was once rounded; the table counts")
                .on("ISO 286-1:2010, Table 1; delta from Table 3");
    }
}
