package org.tenthwise.checklists.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.model.callout.CalloutReader;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Clamping;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.OnDrawing;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.plan.TemperatureAsked;
import org.tenthwise.model.plan.WhenAsked;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Word;

/** The steps of a plan: what all have in common here, the rest with their {@link StepKind}. */
final class StepRules {

    private static final String NUMBER = "number";
    /** Why a line of a list became no check. */
    private static final String REFUSED = "refused";

    private static final String CLAMPING = "clamping";

    private final StepKinds kinds = new StepKinds();
    private final PlanSoFar soFar;
    private final StepOrder order;
    private final BalloonRules balloons = new BalloonRules();
    private final boolean temperaturesPlannedFor;
    private final CalloutReader drawing;
    private final List<Message> requirements = new ArrayList<>();

    /**
     * @param temperaturesPlannedFor whether the file has a table about temperature, sound or not
     * @param drawing reads what stands on it
     */
    StepRules(PlanSoFar soFar, boolean temperaturesPlannedFor, CalloutReader drawing) {
        this.drawing = drawing;
        this.temperaturesPlannedFor = temperaturesPlannedFor;
        this.soFar = soFar;
        this.order = new StepOrder(soFar);
    }

    /** Those that are sound: the order of work by number, notes among it, and behind it what papers prove. */
    List<Step> read(TableKeys plan) {
        List<RawTable> tables = plan.tables("step");
        List<RawTable> notes = plan.has(ProvenRules.NOTE) ? plan.tables(ProvenRules.NOTE) : List.of();
        HoldRules holds = new HoldRules(
                numbers(Stream.concat(tables.stream(), notes.stream()).toList()));
        List<Step> steps = new ArrayList<>();
        for (RawTable table : tables) {
            Requirement requirement = new Requirement(table, drawing);
            TableKeys unnamed = plan.inside(Message.of("plan.in.check-unnumbered"), requirement.completed());
            Optional<Integer> number = unnamed.whole(NUMBER);
            TableKeys keys = number.map(n -> unnamed.about(Message.of("plan.in.check", n)))
                    .orElse(unnamed);
            step(keys, number, holds, requirement).ifPresent(steps::add);
        }
        ProvenRules others = new ProvenRules(plan, soFar, balloons);
        List<Step> all = Stream.concat(
                        Stream.concat(steps.stream().map(step -> cutWith(step, steps)), others.notes(steps).stream())
                                .sorted(Comparator.comparing(Step::number)),
                        others.proven().stream())
                .toList();
        balloons.finish();
        return all;
    }

    /** What was read from the words of the drawing, where steps lean on them. */
    List<Message> requirements() {
        return requirements;
    }

    /** A thread over wires is read before the depth of its groove: only now is it known which step that is. */
    private static Step cutWith(Step step, List<Step> steps) {
        List<Integer> grooves = steps.stream()
                .filter(other -> other.check().cutWith().contains(step.number()))
                .map(Step::number)
                .toList();
        return grooves.isEmpty() ? step : step.with(step.check().cutWith(grooves));
    }

    private Optional<Step> step(TableKeys keys, Optional<Integer> number, HoldRules holds, Requirement requirement) {
        keys.ifAny(REFUSED, keys::prose).ifPresent(why -> keys.problem(REFUSED, "plan.step.refused", why));
        requirement.judge(keys);
        soFar.limitsFrom(requirement.origin());
        Optional<Integer> operation = keys.whole("operation");
        order.judge(keys, number, operation);
        soFar.in(operation);
        Optional<String> kindName = keys.text("kind");
        Optional<StepKind> kind = kindName.flatMap(kinds::named);
        Optional<String> name = keys.text("name");
        OnDrawing drawing = OnDrawingRules.read(keys);
        Optional<String> method = kind.map(StepKind::needsMethod).orElse(false)
                ? keys.prose("method")
                : keys.ifAny("method", keys::prose);
        Optional<String> caution = keys.ifAny("caution", keys::prose);
        Optional<List<Integer>> hold = keys.ifAny("hold", key -> Optional.of(holds.read(keys, number)));
        Optional<Mark> mark = keys.ifAny("at", key -> new MarkRules(keys, soFar.unit()).onOutline(key, soFar));
        if (kind.isEmpty()) {
            kindName.ifPresent(n -> keys.unknown("kind", "plan.kind", n, kinds.names()));
            number.ifPresent(n -> soFar.add(
                    n, new PlanSoFar.Known(kindName.orElse(""), keys.spot().line(), Optional.empty())));
            return Optional.empty();
        }
        Optional<StepClass> stepClass =
                keys.ifAny("class", key -> keys.word(key, List.of(StepClass.values()), Word::of));
        Optional<Check> check = kind.get().read(keys, soFar);
        check.ifPresent(sound -> ResolutionRules.judge(keys, sound));
        check.ifPresent(of -> {
            requirement.judge(keys, of, stepClass.orElse(of.usualClass()));
            number.ifPresent(n -> requirement
                    .said(of)
                    .ifPresent(
                            said -> requirements.add(Message.of("plan.about", Message.of("plan.in.check", n), said))));
        });
        if (check.map(of -> stepClass.orElse(of.usualClass()))
                .filter(StepClass.DRAWING::equals)
                .isPresent()) {
            drawing.balloon()
                    .ifPresent(balloon -> number.ifPresent(n -> balloons.judge(keys, n, balloon, drawing.instances())));
        }
        TemperatureAsked temperatureAsked = kind.get().feelsHeat()
                ? TemperatureRules.read(keys, temperaturesPlannedFor, check)
                : TemperatureAsked.NEVER;
        Optional<Clamping> clamping = kind.get().needsMethod() ? clamping(keys, kindName.get()) : Optional.empty();
        Optional<WhenAsked> when = keys.ifAny(WhenRules.KEY, key -> WhenRules.read(keys));
        check.ifPresent(of -> OnDrawingRules.judge(keys, drawing.instances(), of));
        keys.finish();
        number.ifPresent(n ->
                soFar.add(n, new PlanSoFar.Known(kindName.get(), keys.spot().line(), check)));
        return keys.built(() -> number.map(n -> new Step(
                        n,
                        operation.orElseThrow(),
                        name.orElseThrow(),
                        drawing,
                        method.orElse(""),
                        caution,
                        hold.orElse(List.of()),
                        mark,
                        check.orElseThrow(),
                        temperatureAsked,
                        stepClass.orElseGet(() -> check.get().usualClass()),
                        clamping,
                        when)))
                .flatMap(step -> step);
    }

    private static Optional<Clamping> clamping(TableKeys keys, String kind) {
        Optional<Clamping> clamping = keys.ifAny(CLAMPING, keys::text).flatMap(word -> {
            Optional<Clamping> meant = Clamping.ofKey(word);
            if (meant.isEmpty()) { // the nearest word to "unclamped" is the wrong one
                keys.problem(CLAMPING, "plan.clamping", word);
            }
            return meant;
        });
        if (kind.equals(StepKinds.RUN_OUT)
                && clamping.filter(Clamping.RELEASED::equals).isPresent()) {
            keys.problem(CLAMPING, "plan.clamping.run-out");
        }
        return clamping;
    }

    private static Set<Integer> numbers(List<RawTable> tables) {
        Set<Integer> numbers = new HashSet<>();
        for (RawTable table : tables) {
            if (table.values().get(NUMBER) instanceof RawValue.Number number
                    && number.figure().scale() == 0) {
                numbers.add(number.figure().intValue());
            }
        }
        return numbers;
    }
}
