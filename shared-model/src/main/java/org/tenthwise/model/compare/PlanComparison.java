package org.tenthwise.model.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;

/**
 * Two plans compared by what they mean. What cannot be seen in them is not in it: another machine, place, tool or
 * source of material.
 *
 * @param head what is otherwise of the whole part
 * @param changes by check, in the order of the drawing's numbers; those without one behind, in the order of work
 */
public record PlanComparison(Plan before, Plan after, List<PlanDifference> head, List<CharacteristicChange> changes) {

    private static final Comparator<CharacteristicChange> ORDER = Comparator.<CharacteristicChange, Boolean>comparing(
                    change -> change.balloon().isEmpty())
            .thenComparing((one, other) -> one.balloon()
                    .flatMap(here -> other.balloon().map(here::compareTo))
                    .orElse(0))
            .thenComparing(change -> change.step().number());

    public PlanComparison {
        head = List.copyOf(head);
        changes = List.copyOf(changes);
    }

    public static PlanComparison of(Plan before, Plan after) {
        List<CharacteristicChange> all = new ArrayList<>();
        List<Matching.Matched> pairs = Matching.of(before, after);
        IntFunction<String> calledBefore = Matching.calledBefore(before, after, pairs);
        for (Matching.Matched pair : pairs) {
            Optional<BalloonNumber> balloon =
                    pair.after().flatMap(after::balloon).or(() -> pair.before().flatMap(before::balloon));
            List<PlanDifference> differences = pair.before()
                    .flatMap(step -> pair.after().map(now -> PlanMeaning.of(
                                    before, step, number -> Matching.called(before, before.step(number)))
                            .differences(PlanMeaning.of(after, now, calledBefore))))
                    .orElse(List.of());
            all.add(new CharacteristicChange(balloon, pair.before(), pair.after(), differences, List.of()));
        }
        return new PlanComparison(
                before,
                after,
                PlanMeaning.ofHead(before).differences(PlanMeaning.ofHead(after)),
                restingOn(all, after).stream()
                        .filter(change -> change.isNew()
                                || change.isGone()
                                || !change.differences().isEmpty()
                                || !change.restsOn().isEmpty())
                        .sorted(ORDER)
                        .toList());
    }

    /** What rests on a check that is to be made again is to be made again too. */
    private static List<CharacteristicChange> restingOn(List<CharacteristicChange> all, Plan after) {
        Map<Integer, CharacteristicChange> found = all.stream()
                .filter(change -> !change.isGone())
                .collect(Collectors.toMap(change -> change.step().number(), change -> change));
        Set<Integer> again = new HashSet<>();
        List<CharacteristicChange> resting = new ArrayList<>(
                all.stream().filter(CharacteristicChange::isGone).toList());
        for (Step step : after.steps()) { // a check rests on earlier ones alone
            CharacteristicChange change = found.get(step.number());
            List<String> restsOn = step.check().restsOn().stream()
                    .filter(again::contains)
                    .map(number -> Matching.called(after, after.step(number)))
                    .toList();
            CharacteristicChange whole = new CharacteristicChange(
                    change.balloon(), change.before(), change.after(), change.differences(), restsOn);
            resting.add(whole);
            if (whole.asksForACheck()) {
                again.add(step.number());
            }
        }
        return resting;
    }

    /** Whether the two mean the same, whatever words and noughts they have otherwise. */
    public boolean isAlikeInMeaning() {
        return head.stream().allMatch(one -> one.kind().leavesTheMeaning())
                && changes.stream().allMatch(CharacteristicChange::leavesTheMeaning);
    }

    /** Whether what changed of the whole part asks for all of it to be checked again. */
    public boolean proposesAll() {
        return head.stream().anyMatch(one -> one.kind().asksForACheck());
    }

    /**
     * Whether a partial check is proposed to take in the characteristic: a proposal, which a person confirms. What is
     * not of the drawing is never one.
     */
    public boolean proposes(CharacteristicChange change) {
        return change.after().filter(Step::isOfDrawing).isPresent() && (proposesAll() || change.asksForACheck());
    }

    /** The characteristics of the second plan that a partial check is proposed to take in, in its order of work. */
    public List<Step> proposed() {
        Set<Integer> asked = changes.stream()
                .filter(this::proposes)
                .map(change -> change.step().number())
                .collect(Collectors.toSet());
        return after.steps().stream()
                .filter(Step::isOfDrawing)
                .filter(step -> proposesAll() || asked.contains(step.number()))
                .toList();
    }
}
