package org.tenthwise.model.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;

/**
 * Which step of one plan is which of the other.
 *
 * <p>Where both plans name balloons it is the balloon that tells, with the instance and the class of a step; steps
 * without one, and all where only one of the plans names any, are told by their number and name, then by a name that
 * each plan has once, then by number and kind.
 */
final class Matching {

    /** A step and what it is in the other plan; one of the two is absent where it is new or gone. */
    record Matched(Optional<Step> before, Optional<Step> after) {}

    private final List<Step> before;
    private final List<Step> after;
    private final List<Matched> pairs = new ArrayList<>();

    private Matching(Plan before, Plan after) {
        this.before = new ArrayList<>(before.steps());
        this.after = new ArrayList<>(after.steps());
    }

    static List<Matched> of(Plan before, Plan after) {
        Matching matching = new Matching(before, after);
        if (before.isBallooned() && after.isBallooned()) {
            matching.by(step -> balloon(step).map(balloon -> List.of(balloon, one(step), step.stepClass())));
            matching.by(step -> balloon(step).map(balloon -> List.of(balloon, one(step))));
            matching.unballooned();
        } else {
            matching.byWork(step -> true);
        }
        matching.before.forEach(step -> matching.pairs.add(new Matched(Optional.of(step), Optional.empty())));
        matching.after.forEach(step -> matching.pairs.add(new Matched(Optional.empty(), Optional.of(step))));
        return matching.pairs;
    }

    /** What the first plan calls a step that one of the second names; what the second calls it where it is new. */
    static IntFunction<String> calledBefore(Plan before, Plan after, List<Matched> pairs) {
        return number -> pairs.stream()
                .filter(pair ->
                        pair.after().filter(step -> step.number() == number).isPresent())
                .flatMap(pair -> pair.before().stream())
                .findFirst()
                .map(step -> called(before, step))
                .orElseGet(() -> called(after, after.step(number)));
    }

    /** What a step is called where another names it: its balloon, or its name. */
    static String called(Plan plan, Step step) {
        return plan.balloon(step).map(BalloonNumber::text).orElse(step.name());
    }

    private static Optional<String> balloon(Step step) {
        return step.drawing().balloon().map(balloon -> balloon.text().toUpperCase(Locale.ROOT));
    }

    private static int one(Step step) {
        return step.drawing().instances().one().orElse(0);
    }

    private void unballooned() {
        byWork(step -> balloon(step).isEmpty());
    }

    private void byWork(Predicate<Step> which) {
        by(step -> Optional.of(List.of(step.number(), step.name())).filter(key -> which.test(step)));
        by(step -> Optional.of(List.of(step.name())).filter(key -> which.test(step)));
        by(step -> Optional.of(List.of(step.number(), step.check().key())).filter(key -> which.test(step)));
    }

    /** Pairs the steps left over that one key tells, and that alone have it in their plan. */
    private void by(Function<Step, Optional<? extends List<?>>> key) {
        for (Step one : List.copyOf(before)) {
            Optional<? extends List<?>> mine = key.apply(one);
            if (mine.isEmpty() || having(before, key, mine.get()).size() != 1) {
                continue;
            }
            List<Step> others = having(after, key, mine.get());
            if (others.size() == 1) {
                pairs.add(new Matched(Optional.of(one), Optional.of(others.get(0))));
                before.remove(one);
                after.remove(others.get(0));
            }
        }
    }

    private static List<Step> having(
            List<Step> steps, Function<Step, Optional<? extends List<?>>> key, List<?> wanted) {
        return steps.stream()
                .filter(step -> key.apply(step).filter(wanted::equals).isPresent())
                .toList();
    }
}
