package org.tenthwise.app.text;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.model.compare.CharacteristicChange;
import org.tenthwise.model.compare.PlanComparison;
import org.tenthwise.model.compare.PlanDifference;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.words.Words;

/** Two plans compared, in words: what is otherwise, check by check, and what is proposed to be checked again. */
public final class ComparisonWords {

    private final Words words;

    public ComparisonWords(Words words) {
        this.words = words;
    }

    /** The whole of it, line by line; what belongs to a check is set in under it. */
    public List<String> lines(PlanComparison comparison) {
        List<String> lines = new ArrayList<>();
        lines.add(words.say("compare.plans", plan(comparison.before()), plan(comparison.after())));
        if (!comparison.head().isEmpty()) {
            lines.add(words.say("compare.head"));
            comparison.head().forEach(one -> lines.add(setIn(difference(one))));
        }
        comparison.changes().forEach(change -> {
            lines.add(words.say(
                    comparison.proposes(change) ? "compare.again" : "compare.check",
                    called(change),
                    change.step().name()));
            told(change).forEach(one -> lines.add(setIn(one)));
        });
        lines.addAll(outcome(comparison));
        return lines;
    }

    /** What it comes to, and what no plan shows. */
    public List<String> outcome(PlanComparison comparison) {
        return comparison.isAlikeInMeaning()
                ? List.of(verdict(comparison))
                : List.of(verdict(comparison), words.say("compare.not-seen"));
    }

    /** Part, revision and issue. */
    public String plan(Plan plan) {
        return words.say("compare.plan", plan.part().number(), plan.part().revision(), plan.issue());
    }

    private String setIn(String line) {
        return "  " + line;
    }

    /** The balloon and the number of a check: "12A, check 4". */
    public String called(CharacteristicChange change) {
        String number = words.say("compare.number", change.step().number());
        return change.balloon()
                .map(balloon -> words.list(List.of(balloon, number)))
                .orElse(number);
    }

    /** What is otherwise about a check, a line each. */
    public List<String> told(CharacteristicChange change) {
        if (change.isNew() || change.isGone()) {
            return List.of(words.say(change.isNew() ? "compare.new" : "compare.gone"));
        }
        List<String> told = new ArrayList<>(
                change.differences().stream().map(this::difference).toList());
        if (!change.restsOn().isEmpty()) {
            told.add(words.say("compare.rests-on", change.restsOn()));
        }
        return told;
    }

    /** The class of a change, and what was before and is after it. */
    public String difference(PlanDifference one) {
        String what = words.say(
                "compare.what", words.say("compare.kind", one.kind()), words.say("compare.aspect", one.aspect()));
        if (one.before().isEmpty()) {
            return words.say("compare.added", what, one.after());
        }
        return one.after().isEmpty()
                ? words.say("compare.taken-out", what, one.before())
                : words.say("compare.changed", what, one.before(), one.after());
    }

    private String verdict(PlanComparison comparison) {
        if (comparison.isAlikeInMeaning()) {
            return words.say(
                    comparison.changes().isEmpty() && comparison.head().isEmpty() ? "compare.same" : "compare.alike");
        }
        List<String> again = comparison.proposed().stream()
                .map(step -> called(comparison.after(), step))
                .toList();
        return again.isEmpty()
                ? words.say("compare.proposed-none")
                : words.say(
                        comparison.proposesAll() ? "compare.proposed-all" : "compare.proposed", again.size(), again);
    }

    /** By its number on the drawing, else in the order of work. */
    public String called(Plan plan, Step step) {
        return plan.balloon(step).map(Object::toString).orElseGet(() -> words.say("compare.number", step.number()));
    }
}
