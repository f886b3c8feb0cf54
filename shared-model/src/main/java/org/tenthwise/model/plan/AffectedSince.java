package org.tenthwise.model.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Which characteristics the issues of a plan affect since an earlier one, as persons confirmed them. Where that is not
 * known of each issue between, or names something the plan does not have, it is all of them.
 */
public final class AffectedSince {

    private AffectedSince() {}

    /**
     * Numbers of the steps, in plan order; those of every characteristic where nobody can tell, or nothing is named.
     *
     * @param issue of the plan that the earlier part was made to
     */
    public static List<Integer> of(Plan plan, String issue) {
        return named(plan, issue).orElseGet(() -> characteristics(plan));
    }

    private static Optional<List<Integer>> named(Plan plan, String issue) {
        List<IssueOfPlan> issues = plan.issues();
        List<String> numbers = issues.stream().map(IssueOfPlan::number).toList();
        int before = numbers.indexOf(issue);
        if (before < 0) {
            return Optional.empty();
        }
        Set<Integer> steps = new HashSet<>();
        for (IssueOfPlan later : issues.subList(before + 1, issues.size())) {
            if (later.affected().isEmpty()) {
                return Optional.empty();
            }
            for (String called : later.affected().get()) {
                List<Integer> meant = called(plan, called);
                if (meant.isEmpty()) {
                    return Optional.empty();
                }
                steps.addAll(meant);
            }
        }
        return Optional.of(steps.stream().sorted().toList()).filter(any -> !any.isEmpty());
    }

    /** Numbers of the steps so called, by balloon or by name. */
    public static List<Integer> called(Plan plan, String called) {
        return plan.steps().stream()
                .filter(step -> step.name().equals(called)
                        || plan.balloon(step)
                                .filter(balloon -> balloon.text().equalsIgnoreCase(called))
                                .isPresent())
                .map(Step::number)
                .toList();
    }

    private static List<Integer> characteristics(Plan plan) {
        return plan.steps().stream().filter(Step::isOfDrawing).map(Step::number).toList();
    }
}
