package org.tenthwise.model.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;

/** Works out the findings of a run, one step after the other, each from its own pass and from the steps it leans on. */
final class Assessment {

    private final Plan plan;
    private final Run run;
    private final Map<Integer, Finding> found = new LinkedHashMap<>();

    private Assessment(Plan plan, Run run) {
        this.plan = plan;
        this.run = run;
    }

    /** The finding of the pass in hand for every step, in plan order. */
    static Map<Integer, Finding> of(Plan plan, Run run) {
        return new Assessment(plan, run).of(plan.steps());
    }

    /**
     * The findings of the passes of {@code step} before the one in hand, each with what it leaned on as that stood
     * then. What was struck out of a pass since counts no more; the cut proposed after it stays the one that was
     * proposed.
     */
    static List<Finding> earlier(Plan plan, Step step, Run run) {
        List<Finding> earlier = new ArrayList<>();
        for (Run.Pass pass : run.passes(step)) {
            if (pass.ended().isPresent() && !pass.isEmpty()) {
                Assessment then =
                        leaningOn(step, plan, run.before(pass.ended().get().by()));
                earlier.add(then.find(step, pass).proposing(then.inHand(step).proposal()));
            }
        }
        return earlier;
    }

    /** What was proposed at a step that ended with an entry, as everything stood before it. */
    static Optional<Proposal> proposedBefore(Entry entry, Plan plan, Step step, Run run) {
        return leaningOn(step, plan, run.before(entry)).inHand(step).proposal();
    }

    private static Assessment leaningOn(Step step, Plan plan, Run run) {
        Assessment then = new Assessment(plan, run);
        then.of(step.check().restsOn().stream().map(plan::step).toList());
        return then;
    }

    private Map<Integer, Finding> of(List<Step> steps) {
        steps.forEach(step -> found.put(step.number(), inHand(step)));
        return found;
    }

    private Finding inHand(Step step) {
        return find(step, run.pass(step));
    }

    private Finding find(Step step, Run.Pass pass) {
        Check check = step.check();
        if (check instanceof Check.RunOut runOut) {
            return RunOutSum.of(step, runOut, pass);
        }
        if (check instanceof Check.Size size) {
            return SizeSum.of(plan, step, size, pass, run);
        }
        if (check instanceof Check.PlugFit plugFit) {
            return PlugSum.of(
                    plan,
                    step,
                    plugFit,
                    pass,
                    sizes(plugFit.boreStep()).stream().map(Measured::value).toList());
        }
        if (check instanceof Check.OverWires overWires) {
            return WiresSum.of(
                    plan,
                    step,
                    overWires,
                    pass,
                    overWires.minorStep().map(this::sizes).orElse(List.of()),
                    overWires.minorStep().flatMap(this::leastSize),
                    run);
        }
        if (!check.slots().isEmpty()) {
            throw new IllegalStateException(
                    "Nothing works out what is read at a " + check.getClass().getSimpleName());
        }
        return answers(step, pass);
    }

    /** The lower limit of another step; absent where it measures no size, or has an upper one alone. */
    private Optional<Length> leastSize(int step) {
        return plan.step(step).check() instanceof Check.OfSize size
                ? size.limits().lower().map(Written::length)
                : Optional.empty();
    }

    /** The sizes of another step; none until all of them are read, and none while a figure there is far off. */
    private List<Measured> sizes(int step) {
        return found.get(step) instanceof SizeFinding size && size.missing() == 0 && !Plausible.spoils(size)
                ? size.measured()
                : List.of();
    }

    private static AnswerFinding answers(Step step, Run.Pass pass) {
        Map<Question, Answer> answers = new LinkedHashMap<>();
        boolean wrong = false;
        for (Question question : step.check().questions()) {
            Optional<Answer> answer = pass.answer(question);
            answer.ifPresent(given -> answers.put(question, given));
            wrong |= answer.isPresent() && answer.get() != question.answers().get(0);
        }
        int missing = step.check().questions().size() - answers.size();
        VerdictKind standing = wrong ? VerdictKind.FAIL : missing > 0 ? VerdictKind.OPEN : VerdictKind.PASS;
        return new AnswerFinding(step, answers, Verdict.plain(standing), missing);
    }
}
