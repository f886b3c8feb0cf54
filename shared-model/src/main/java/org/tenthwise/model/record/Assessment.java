package org.tenthwise.model.record;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.model.plan.AngleCheck;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.CalculatedCheck;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.plan.IndicatedCheck;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.PlugFitCheck;
import org.tenthwise.model.plan.PositionCheck;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.ScaleCheck;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.WorkedCheck;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.AskedSteps;
import org.tenthwise.model.run.Disposing;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.verdict.VerdictKind;

/** Works out the findings of a run, one step after the other, each from its own pass and from the steps it leans on. */
final class Assessment {

    private final Plan plan;
    private final Run run;
    private final Optional<Step> sought;
    private final Map<Integer, Finding> found = new HashMap<>();

    /** @param sought the one step it is about, any other being only leaned on; absent where it is about all */
    private Assessment(Plan plan, Run run, Optional<Step> sought) {
        this.plan = plan;
        this.run = run;
        this.sought = sought;
    }

    /** A line for every step, in plan order. */
    static List<Line> of(Plan plan, Run run) {
        Assessment all = new Assessment(plan, run, Optional.empty());
        Set<Integer> asked = AskedSteps.of(plan, run.begun().occasion());
        return WaitingSteps.in(plan.steps().stream()
                .map(step -> all.line(step, Optional.empty(), asked.contains(step.number())))
                .toList());
    }

    /**
     * The same where a sheet was worked out before {@code entry}, the last of the run: what that does not touch stays
     * as it was.
     */
    static List<Line> after(Entry entry, Sheet before, Run run) {
        Assessment again = new Assessment(before.plan(), run, Optional.empty());
        Set<Integer> touched = new HashSet<>();
        boolean everywhere = entry.event().as(ShopEvent.MachineKnown.class).isPresent();
        run.step(entry).ifPresent(touched::add);
        List<Line> lines = new ArrayList<>();
        for (Line line : before.lines()) {
            int number = line.step().number();
            if (everywhere
                    || touched.contains(number)
                    || line.step().check().touchedBy().stream().anyMatch(touched::contains)
                    || overWires(line.step(), before.plan())
                            .filter(touched::contains)
                            .isPresent()) {
                touched.add(number);
                lines.add(again.line(line.step(), Optional.of(line), line.asked()));
            } else {
                again.found.put(number, line.finding());
                lines.add(line);
            }
        }
        return WaitingSteps.in(lines);
    }

    /**
     * @param before the line as it was, with the passes that ended until then
     * @param asked whether the run asks it; once something is taken all the same, it is in the run
     */
    private Line line(Step step, Optional<Line> before, boolean asked) {
        List<Pass> passes = run.passes(step);
        Finding inHand = find(step, passes.get(passes.size() - 1));
        found.put(step.number(), inHand);
        List<Disposing> dispositions = run.dispositions(step);
        boolean inRun = asked || passes.stream().anyMatch(pass -> !pass.isEmpty()) || !dispositions.isEmpty();
        return new Line(step, inHand, earlier(step, passes, before), passes, dispositions, List.of(), inRun);
    }

    /**
     * The findings of the passes of {@code step} before the one in hand, each with what it leaned on as that stood
     * then. What was struck out of a pass since counts no more; the cut proposed after it stays the one that was
     * proposed.
     */
    private List<Finding> earlier(Step step, List<Pass> passes, Optional<Line> before) {
        List<Finding> earlier = new ArrayList<>();
        for (Pass pass : passes) {
            if (pass.ended().isPresent() && !pass.isEmpty()) {
                earlier.add(before.filter(line -> line.passes().contains(pass))
                        .flatMap(line -> line.found(pass))
                        .orElseGet(() -> ended(step, pass)));
            }
        }
        return earlier;
    }

    private Finding ended(Step step, Pass pass) {
        Assessment then =
                leaningOn(step, plan, run.before(pass.ended().orElseThrow().by()));
        return then.find(step, pass).proposing(then.inHand(step).proposal());
    }

    /** What was proposed at a step that ended with an entry, as everything stood before it. */
    static Optional<Proposal> proposedBefore(Entry entry, Plan plan, Step step, Run run) {
        return leaningOn(step, plan, run.before(entry)).inHand(step).proposal();
    }

    /** Whether a step had passed, as everything stood before an entry. */
    static boolean passedBefore(Entry entry, Plan plan, Step step, Run run) {
        return leaningOn(step, plan, run.before(entry)).inHand(step).verdict().passed();
    }

    private static Assessment leaningOn(Step step, Plan plan, Run run) {
        Assessment then = new Assessment(plan, run, Optional.of(step));
        then.lean(step);
        return then;
    }

    /** Finds what stands before a step and is used there, and before that what is used for it. */
    private void lean(Step step) {
        step.check().touchedBy().stream()
                .filter(number -> number < step.number())
                .map(plan::step)
                .forEach(before -> {
                    lean(before);
                    found.put(before.number(), inHand(before));
                });
    }

    /** The step that measures the flanks which the tool of another cuts too; absent where it cuts none. */
    private static Optional<Integer> overWires(Step step, Plan plan) {
        Optional<Integer> ofItsGroove = step.check()
                .asSize()
                .map(CheckOfSize::contact)
                .flatMap(contact -> contact instanceof Contact.DepthOfThread thread
                        ? Optional.of(thread.wiresStep())
                        : Optional.empty());
        return ofItsGroove.or(() -> plan.steps().stream()
                .filter(wires -> wires.check().underWires().isPresent()
                        && wires.check().restsOn().contains(step.number()))
                .map(Step::number)
                .findFirst());
    }

    /**
     * What is found of the flanks that the tool of a step cuts too; absent where it cuts none, and of a step that is
     * only leaned on, as no more than its sizes are used. Over wires a root must be known first: it is taken as read
     * here.
     */
    private Optional<Finding> flanks(Step step, CheckOfSize size, Pass pass) {
        boolean leanedOn = sought.filter(about -> !about.equals(step)).isPresent();
        return overWires(step, plan).filter(any -> !leanedOn).map(plan::step).map(wires -> {
            if (wires.number() > step.number()) {
                found.put(step.number(), SizeAssessment.of(plan, step, size, pass, run, Optional.empty()));
            }
            return Optional.ofNullable(found.get(wires.number())).orElseGet(() -> inHand(wires));
        });
    }

    private Finding inHand(Step step) {
        return find(step, run.pass(step));
    }

    private Finding find(Step step, Pass pass) {
        return step.check().match(new Check.Cases<Finding>() {
            @Override
            public Finding asked(AskedCheck asked) {
                return AskedAssessment.of(step, asked, pass);
            }

            @Override
            public Finding runOut(RunOutCheck runOut) {
                return RunOutAssessment.of(step, runOut, pass);
            }

            @Override
            public Finding size(SizeCheck size) {
                return SizeAssessment.of(plan, step, size, pass, run, flanks(step, size, pass));
            }

            @Override
            public Finding indicated(IndicatedCheck indicated) {
                return SizeAssessment.of(plan, step, indicated, pass, run, Optional.empty());
            }

            @Override
            public Finding angle(AngleCheck angle) {
                return SizeAssessment.of(plan, step, angle, pass, run, Optional.empty());
            }

            @Override
            public Finding position(PositionCheck position) {
                return PositionAssessment.of(
                        step,
                        position,
                        pass,
                        position.sizeStep()
                                .filter(number -> !isStillToCut(number))
                                .flatMap(number -> sized(number)));
            }

            @Override
            public Finding scale(ScaleCheck scale) {
                return SizeAssessment.of(plan, step, scale, pass, run, Optional.empty());
            }

            @Override
            public Finding worked(WorkedCheck worked) {
                return WorkedAssessment.of(plan, step, worked, pass);
            }

            @Override
            public Finding plugFit(PlugFitCheck plugFit) {
                return PlugFitAssessment.of(
                        plan,
                        step,
                        plugFit,
                        pass,
                        sizes(plugFit.boreStep()).stream().map(Measured::value).toList());
            }

            @Override
            public Finding calculated(CalculatedCheck calculated) {
                return CalculatedAssessment.of(
                        plan.unit(), step, calculated, found::get, number -> isStillToCut(number));
            }

            @Override
            public Finding overWires(OverWiresCheck overWires) {
                return OverWiresAssessment.of(
                        plan,
                        step,
                        overWires,
                        pass,
                        overWires.minorStep().map(step -> sizes(step)).orElse(List.of()),
                        overWires.minorStep().flatMap(step -> leastSize(step)),
                        grooves(overWires),
                        run);
            }

            @Override
            public Finding document(DocumentCheck document) {
                return DocumentAssessment.of(step, document, pass);
            }
        });
    }

    /** The depths that the tool of a thread cuts too, by their readings alone: what may come off there is not used. */
    private List<SizeFinding> grooves(OverWiresCheck wires) {
        return wires.cutWith().stream()
                .map(plan::step)
                .map(groove -> SizeAssessment.of(
                        plan, groove, groove.check().asSize().orElseThrow(), run.pass(groove), run, Optional.empty()))
                .toList();
    }

    /** The lower limit of another step; absent where it measures no size, or has an upper one alone. */
    private Optional<Length> leastSize(int step) {
        return plan.step(step)
                .check()
                .asSize()
                .flatMap(size -> size.limits().lower())
                .map(Written::length);
    }

    /** Whether another step is to be cut again, so that its size is not the last; not where it is used as it is. */
    private boolean isStillToCut(int step) {
        return Optional.ofNullable(found.get(step))
                        .filter(finding -> finding.verdict().standing() == VerdictKind.CUT_AGAIN)
                        .isPresent()
                && run.dispositions(plan.step(step)).stream()
                        .filter(Disposing::inForce)
                        .map(signed -> signed.disposed().disposition())
                        .noneMatch(signed -> signed == Disposition.USE_AS_IS || signed == Disposition.CARRY_ON);
    }

    /** What was found of the size that another step measures. */
    private Optional<SizeFinding> sized(int step) {
        return Optional.ofNullable(found.get(step))
                .filter(SizeFinding.class::isInstance)
                .map(SizeFinding.class::cast);
    }

    /** The sizes of another step; none until all of them are read, and none while a figure there is far off. */
    private List<Measured> sizes(int step) {
        return Optional.ofNullable(found.get(step))
                .filter(finding -> finding.missing() == 0 && !Plausible.spoils(finding))
                .map(Finding::measured)
                .orElse(List.of());
    }
}
