package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.gauge.GaugeAbility;
import org.tenthwise.model.plan.BalloonGap;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.Clamping;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.record.DrawingAccount;
import org.tenthwise.model.words.Message;

/** What is worth a second look in a plan without errors. */
public final class PlanRemarks {

    private static final int THREE = 3;

    private PlanRemarks() {}

    public static List<Message> of(Plan plan) {
        return Stream.of(balloons(plan), coarse(plan), lettingThrough(plan), blindToLobes(plan))
                .flatMap(said -> said)
                .toList();
    }

    /**
     * Balloons missing in the row, checks of the drawing without one, and balloons that none of them answers; nothing
     * of a plan that names none.
     */
    private static Stream<Message> balloons(Plan plan) {
        if (!plan.isBallooned()) {
            return Stream.empty();
        }
        List<BalloonNumber> balloons =
                ofDrawing(plan).map(plan::balloon).flatMap(Optional::stream).toList();
        List<BalloonNumber> unanswered = DrawingAccount.unansweredBy(plan);
        return Stream.of(
                        BalloonGap.in(balloons).stream().map(PlanRemarks::missing),
                        said("plan.remark.no-balloon", ofDrawing(plan).filter(step -> plan.balloon(step)
                                .isEmpty())),
                        unanswered.stream().limit(1).map(any -> Message.of("plan.remark.unanswered", unanswered)))
                .flatMap(said -> said);
    }

    /** Gauges whose step is more than a tenth of the tolerance. The rule of ten, common practice. */
    private static Stream<Message> coarse(Plan plan) {
        return said("plan.remark.coarse", plan.steps().stream().filter(step -> step.check()
                .means()
                .flatMap(Check.Means::resolution)
                .filter(of -> ResolutionRules.isCoarser(of, BigDecimal.TEN, step.check()))
                .isPresent()));
    }

    /** Limit gauges that let through what is out. */
    private static Stream<Message> lettingThrough(Plan plan) {
        return said("plan.remark.lets-through", plan.steps().stream().filter(step -> !step.check()
                .isProvenByPassing()));
    }

    /**
     * Diameters that two points read while three jaws hold the work: they press it into three lobes, which measure the
     * same all round. Common practice.
     */
    private static Stream<Message> blindToLobes(Plan plan) {
        List<Integer> inThreeJaws = plan.steps().stream()
                .filter(step -> step.check()
                        .asTurn()
                        .filter(turn -> turn.jaws() == THREE)
                        .isPresent())
                .map(Step::operation)
                .toList();
        return said(
                "plan.remark.lobes",
                plan.steps().stream()
                        .filter(step -> inThreeJaws.contains(step.operation())
                                && step.clamping()
                                        .filter(Clamping.RELEASED::equals)
                                        .isEmpty()
                                && step.check()
                                        .asSize()
                                        .filter(size -> size.feature().isTurned()
                                                && size.underWires().isEmpty())
                                        .map(CheckOfSize::with)
                                        .filter(means -> GaugeAbility.KNOWN.stream()
                                                .anyMatch(ability ->
                                                        ability.kind().equals(means.kind()) && ability.touchesAtTwo()))
                                        .isPresent()));
    }

    /** Of several checks at once; nothing of none. */
    private static Stream<Message> said(String key, Stream<Step> steps) {
        List<Integer> numbers = steps.map(Step::number).toList();
        return numbers.isEmpty() ? Stream.empty() : Stream.of(Message.of(key, numbers.size(), numbers));
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
