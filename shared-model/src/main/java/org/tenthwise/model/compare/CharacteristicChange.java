package org.tenthwise.model.compare;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.Step;

/**
 * What is otherwise about one check.
 *
 * @param balloon its number on the drawing, as the second plan has it, else the first; absent where neither has one
 * @param before in the first plan; absent for one that is new
 * @param after in the second plan; absent for one that is gone
 * @param differences empty for one that is new or gone, and for one that only rests on another that changed
 * @param restsOn what those are called that it rests on and that are to be checked again
 */
public record CharacteristicChange(
        Optional<BalloonNumber> balloon,
        Optional<Step> before,
        Optional<Step> after,
        List<PlanDifference> differences,
        List<String> restsOn) {

    public CharacteristicChange {
        differences = List.copyOf(differences);
        restsOn = List.copyOf(restsOn);
    }

    public boolean isNew() {
        return before.isEmpty();
    }

    public boolean isGone() {
        return after.isEmpty();
    }

    /** As the second plan has it, else the first. */
    public Step step() {
        return after.or(() -> before).orElseThrow();
    }

    /** Whether it asks for itself to be checked again, or for the first time. */
    boolean asksForACheck() {
        return !isGone()
                && (isNew()
                        || !restsOn.isEmpty()
                        || differences.stream().anyMatch(one -> one.kind().asksForACheck()));
    }

    /** Whether both plans mean the same of it. */
    boolean leavesTheMeaning() {
        return !isNew()
                && !isGone()
                && differences.stream().allMatch(one -> one.kind().leavesTheMeaning());
    }
}
