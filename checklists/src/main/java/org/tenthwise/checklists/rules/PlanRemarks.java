package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.plan.BalloonGap;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.words.Message;

/** What is worth a second look in a plan without errors. */
public final class PlanRemarks {

    private PlanRemarks() {}

    /** Balloons missing in the row, and checks of the drawing without one; nothing of a plan that names none. */
    public static List<Message> of(Plan plan) {
        if (!plan.isBallooned()) {
            return List.of();
        }
        List<BalloonNumber> balloons =
                ofDrawing(plan).map(plan::balloon).flatMap(Optional::stream).toList();
        List<Integer> without = ofDrawing(plan)
                .filter(step -> plan.balloon(step).isEmpty())
                .map(Step::number)
                .toList();
        return Stream.concat(
                        BalloonGap.in(balloons).stream().map(PlanRemarks::missing),
                        Stream.of(without)
                                .filter(numbers -> !numbers.isEmpty())
                                .map(numbers -> Message.of("plan.remark.no-balloon", numbers.size(), numbers)))
                .toList();
    }

    private static Message missing(BalloonGap gap) {
        return gap.isOne()
                ? Message.of("plan.remark.missing", gap.row() + gap.first())
                : Message.of("plan.remark.missing-several", gap.row() + gap.first(), gap.row() + gap.last());
    }

    private static Stream<Step> ofDrawing(Plan plan) {
        return plan.steps().stream().filter(step -> step.stepClass() == StepClass.DRAWING);
    }
}
