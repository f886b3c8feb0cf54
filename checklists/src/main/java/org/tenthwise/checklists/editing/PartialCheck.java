package org.tenthwise.checklists.editing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which of the proposed characteristics a partial check takes in, as a person says of each. What was said is of the two
 * texts that were compared: once either changes, each is asked about again.
 */
public final class PartialCheck {

    private String before = "";
    private String after = "";
    /** Absent for one that nobody has said anything of yet. */
    private final Map<String, Optional<Boolean>> answers = new LinkedHashMap<>();

    /** With nothing proposed yet. */
    public PartialCheck() {}

    /**
     * Asks about each of what is proposed, unless the same two texts were compared before.
     *
     * @param beforeNow the text of the plan in force
     * @param proposed what they are called, each once, in the order of work
     */
    public void propose(String beforeNow, PlanInHand plan, List<String> proposed) {
        String afterNow = plan.text().text();
        if (!before.equals(beforeNow) || !after.equals(afterNow)) {
            answers.clear();
            before = beforeNow;
            after = afterNow;
            proposed.forEach(called -> answers.put(called, Optional.empty()));
        }
    }

    /** What a person says of one; nothing of one that is not proposed. */
    public void answer(String called, boolean again) {
        answers.replace(called, Optional.of(again));
    }

    /** Absent while nobody has said. */
    public Optional<Boolean> answer(String called) {
        return answers.getOrDefault(called, Optional.empty());
    }

    /** Of how many nobody has said anything yet. */
    public int unanswered() {
        return (int) answers.values().stream().filter(Optional::isEmpty).count();
    }

    /** Whether a person began to say and did not say it of each. */
    public boolean isHalfAnswered(PlanInHand plan) {
        return isOf(plan) && unanswered() > 0 && unanswered() < answers.size();
    }

    private boolean isOf(PlanInHand plan) {
        return after.equals(plan.text().text());
    }

    /** What is checked again; absent where nobody said, or the plan changed since. */
    public Optional<List<String>> affected(PlanInHand plan) {
        return !isOf(plan) || answers.isEmpty() || unanswered() > 0
                ? Optional.empty()
                : Optional.of(answers.entrySet().stream()
                        .filter(answer -> answer.getValue().equals(Optional.of(true)))
                        .map(Map.Entry::getKey)
                        .toList());
    }
}
