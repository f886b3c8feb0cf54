package org.tenthwise.model.run;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;

/**
 * Which steps of its plan a run asks, by what it was begun for. A full first article, and a run of which nobody said
 * what it is for, ask all of them. A partial first article leaves out characteristics alone: those that neither are
 * affected nor rest on what is; what protects the work is asked of every part that is made. What is measured again asks
 * the characteristics that the earlier run had: of a check that was not made there is nothing to make again. All others
 * ask what the plan wants of that piece.
 *
 * <p>With a step goes whatever its finding rests on or is cut with, whatever a hold point before it waits for, and what
 * comes of steps that are asked with nothing taken for it.
 */
public final class AskedSteps {

    private final List<Step> steps;
    private final Set<Integer> asked;

    private AskedSteps(Plan plan, Occasion occasion) {
        steps = plan.steps();
        asked = steps.stream()
                .filter(step -> isWanted(step, occasion))
                .map(Step::number)
                .collect(Collectors.toCollection(TreeSet::new));
        while (addWhatStandsBehind()) {
            // what was added may rest on other steps
        }
    }

    /** Numbers of the steps that are asked, rising. */
    public static Set<Integer> of(Plan plan, Occasion occasion) {
        return Set.copyOf(new AskedSteps(plan, occasion).asked);
    }

    private static boolean isWanted(Step step, Occasion occasion) {
        return switch (occasion.purpose()) {
            case NOT_STATED, FIRST_ARTICLE_FULL -> true;
            case FIRST_ARTICLE_PARTIAL -> !step.isOfDrawing() || isAbout(step, occasion.affected());
            case MEASURED_AGAIN ->
                step.isOfDrawing()
                        && (occasion.affected().isEmpty() || occasion.affected().contains(step.number()));
            case FIRST_PIECE -> step.when().map(when -> when.asksPiece(1)).orElse(true);
            case IN_PROCESS ->
                step.when()
                        .map(when -> when.asksPiece(occasion.piece().orElseThrow()))
                        .orElse(true);
            case LAST_PIECE -> step.when().map(when -> when.asksLast()).orElse(true);
        };
    }

    private static boolean isAbout(Step step, List<Integer> affected) {
        return affected.contains(step.number())
                || step.check().restsOn().stream().anyMatch(affected::contains);
    }

    /** Whether there was anything to add. */
    private boolean addWhatStandsBehind() {
        boolean added = false;
        boolean askedBehind = false;
        for (int i = steps.size() - 1; i >= 0; i--) {
            Step step = steps.get(i);
            if (askedBehind) {
                added |= asked.addAll(step.hold());
            }
            if (asked.contains(step.number())) {
                added |= asked.addAll(step.check().touchedBy());
                askedBehind |= step.check().isInOrder();
            } else if (comesByItself(step)) {
                added |= asked.add(step.number());
            }
        }
        return added;
    }

    /** What is worked out of steps that are all asked needs nothing more, and what it comes to is not hidden. */
    private boolean comesByItself(Step step) {
        return step.check().isTakenElsewhere() && asked.containsAll(step.check().restsOn());
    }
}
