package org.tenthwise.model.plan;

import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which characteristics the issues of a plan affect since an earlier one, as persons confirmed them: those of every
 * issue between taken together, never those of the newest alone. Where that is not known of each issue between, or one
 * names something the plan does not have, it is all of them.
 */
public final class AffectedSince {

    private final Plan plan;
    private final List<IssueOfPlan> since;
    private final boolean known;

    private AffectedSince(Plan plan, List<IssueOfPlan> since, boolean known) {
        this.plan = plan;
        this.since = since;
        this.known = known;
    }

    /**
     * @param before the plan that the earlier part was made to; where its issue is none of {@code plan}, every issue of
     *     that counts as later. The number of an issue is that of its revision: under another one it is the same issue
     *     only where all that is said of it is the same
     */
    public static AffectedSince of(Plan before, Plan plan) {
        List<IssueOfPlan> issues = plan.issues();
        int place = IntStream.range(0, issues.size())
                .filter(i -> isOf(before, issues.get(i), plan))
                .findFirst()
                .orElse(-1);
        List<IssueOfPlan> since = issues.subList(place + 1, issues.size());
        return new AffectedSince(plan, since, place >= 0 && since.stream().allMatch(issue -> isNamedIn(plan, issue)));
    }

    /** By every issue of a plan, where nobody knows to which of them the earlier part was made. */
    public static AffectedSince everIn(Plan plan) {
        return new AffectedSince(plan, plan.issues(), false);
    }

    /** Issues since of which nobody said what they affect, or that name something the plan does not have. */
    public List<IssueOfPlan> unsaid() {
        return since.stream().filter(issue -> !isNamedIn(plan, issue)).toList();
    }

    private static boolean isOf(Plan before, IssueOfPlan issue, Plan plan) {
        return before.part().equals(plan.part())
                ? issue.number().equals(before.issue())
                : before.issued().filter(issue::equals).isPresent();
    }

    private static boolean isNamedIn(Plan plan, IssueOfPlan issue) {
        return issue.affected()
                .filter(named ->
                        named.stream().noneMatch(called -> called(plan, called).isEmpty()))
                .isPresent();
    }

    /** Numbers of the steps, rising; those of every characteristic where nobody can tell, or nothing is named. */
    public List<Integer> steps() {
        List<Integer> named = named();
        return known && !named.isEmpty()
                ? named
                : plan.steps().stream()
                        .filter(Step::isOfDrawing)
                        .map(Step::number)
                        .toList();
    }

    /** Steps that an issue since names and {@code said} has not, in plan order: nobody leaves these out. */
    public List<Step> leftOut(Collection<Integer> said) {
        return named().stream()
                .filter(number -> !said.contains(number))
                .map(plan::step)
                .toList();
    }

    private List<Integer> named() {
        return since.stream()
                .flatMap(issue -> issue.affected().stream())
                .flatMap(List::stream)
                .flatMap(called -> called(plan, called).stream())
                .distinct()
                .sorted()
                .toList();
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
}
