package org.tenthwise.checklists.editing;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.tenthwise.checklists.rules.PlanProblem;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.words.Message;

/**
 * A plan being made or changed: its text, what is still open in it, and the way back. Steps are known by their place in
 * the order of work, from 0; their numbers follow it.
 */
public final class PlanInHand {

    private static final String STEP = "step";

    /** What is proven elsewhere, and what else the drawing asks for. */
    private static final List<String> BESIDE = List.of("elsewhere", "note", "material", "process", "test");

    private static final String NUMBER = "number";
    private static final String INSTANCE = "instance";
    /**
     * What cannot be true of a copy: its place in the order, its number and its place on the drawing, and what waits
     * for it.
     */
    private static final List<String> NOT_COPIED =
            List.of(NUMBER, "balloon", SpotText.KEY, INSTANCE, "hold", "refused");

    private final PlanReader reader = new PlanReader();
    private final Deque<PlanText> before = new ArrayDeque<>();
    private PlanText text;
    private PlanReading reading;

    public PlanInHand(PlanText text) {
        this.text = text;
        this.reading = reader.read(text.text());
    }

    /**
     * Something that keeps the text from being a plan.
     *
     * @param step place of the step it is about; absent where it is about the head or another table
     */
    public record OpenPoint(OptionalInt step, PlanProblem problem) {

        /** The key that is missing, the likelier one where two come to the same; absent where something is wrong. */
        public Optional<String> missing() {
            return missing(problem.what());
        }

        private static Optional<String> missing(Message problem) {
            return switch (problem.key()) {
                case "plan.about" -> missing((Message) problem.values().get("1"));
                case "plan.key.missing" ->
                    Optional.of(String.valueOf(problem.values().get("0")));
                case "plan.limits.missing" -> Optional.of("requirement");
                case "plan.thread.pitch-missing" -> Optional.of("pitch");
                case "plan.means.no-master" -> Optional.of("master");
                case "plan.requirement.inside-or-outside", "plan.requirement.several", "plan.requirement.no-kind" ->
                    Optional.of("kind");
                default -> Optional.empty();
            };
        }
    }

    /**
     * A table that stands in no order of work.
     *
     * @param list its name in plan files
     * @param place among those of its name
     * @param missing keys it is none without
     */
    public record Beside(String list, int place, List<String> missing) {}

    public PlanText text() {
        return text;
    }

    /** What the text comes to; absent while anything is open. */
    public Optional<Plan> plan() {
        return reading instanceof PlanReading.Good good ? Optional.of(good.plan()) : Optional.empty();
    }

    /** What is still open, in the order of the text. */
    public List<OpenPoint> open() {
        return reading instanceof PlanReading.Bad bad
                ? bad.problems().stream()
                        .map(problem -> new OpenPoint(text.at(STEP, problem.line()), problem))
                        .toList()
                : List.of();
    }

    public List<TableText> steps() {
        return text.list(STEP);
    }

    /** How many checks the plan has, with what is proven elsewhere and what else the drawing asks for. */
    public int checks() {
        return steps().size()
                + BESIDE.stream().mapToInt(list -> text.list(list).size()).sum();
    }

    /** The first of the tables outside the order of work about which something is open; absent where none is. */
    public Optional<Beside> openBeside() {
        return BESIDE.stream().flatMap(list -> openOf(list).stream()).findFirst();
    }

    private Optional<Beside> openOf(String list) {
        return open().stream()
                .filter(point -> point.step().isEmpty())
                .flatMap(point -> text.at(list, point.problem().line()).stream().boxed())
                .findFirst()
                .map(place -> new Beside(list, place, missingOf(list, place)));
    }

    private List<String> missingOf(String list, int place) {
        return open().stream()
                .filter(point -> text.at(list, point.problem().line()).equals(OptionalInt.of(place)))
                .flatMap(point -> point.missing().stream())
                .distinct()
                .toList();
    }

    /** Changes anything; nothing is kept of a change that changes nothing. */
    public void change(UnaryOperator<PlanText> change) {
        PlanText changed = new WorkOrder(change.apply(text)).numbered();
        if (!changed.text().equals(text.text())) {
            before.push(text);
            take(changed);
        }
    }

    public void changeStep(int place, UnaryOperator<TableText> change) {
        change(plan -> plan.with(STEP, place, change));
    }

    /**
     * Changes a step in one change with what follows from its operation: one that the plan has not got becomes one of
     * it, and the step goes to the checks of its operation.
     *
     * @param called what a new operation is called, by its number
     * @return its place then
     */
    public int answer(int place, UnaryOperator<TableText> change, UnaryOperator<String> called) {
        PlanText changed = text.with(STEP, place, change);
        TableText step = changed.list(STEP).get(place);
        Optional<String> operation = step.value("operation");
        if (operation.isEmpty() || operation.equals(steps().get(place).value("operation"))) {
            change(plan -> changed);
            return place;
        }
        PlanText known = new OperationOrder(changed).withThatOf(place, called.apply(operation.get()));
        int to = new OperationOrder(known).placeOf(place);
        change(plan -> to == place ? known : known.moved(STEP, place, to));
        return to;
    }

    /** @param step without a number; it gets that of its place */
    public void add(int place, TableText step) {
        change(plan -> plan.inserted(STEP, place, step.without(NUMBER)));
    }

    /** Puts the checks of a template in from a place on, as those of an operation; they lead to each other. */
    public void add(int place, Template template, Optional<String> operation) {
        List<TableText> steps = template.steps().stream()
                .map(step -> operation
                        .map(number -> step.withAfter(List.of(NUMBER), "operation", number))
                        .orElse(step))
                .toList();
        change(plan -> new WorkOrder(plan).inserted(place, steps));
    }

    /** Puts a copy right behind a step, without its number on the drawing: two may not answer one. */
    public void copy(int place) {
        add(place + 1, copied(place));
    }

    private TableText copied(int place) {
        TableText copy = steps().get(place).withoutLead();
        for (String key : NOT_COPIED) {
            copy = copy.without(key);
        }
        return copy;
    }

    /**
     * Makes a step that looks after several alike into one for each of them.
     *
     * @param count how many there are
     */
    public void split(int place, int count) {
        TableText copy = copied(place);
        Optional<String> balloon = steps().get(place).value("balloon");
        change(plan -> {
            PlanText split = plan.with(STEP, place, step -> step.with(INSTANCE, TomlValue.number(1)));
            for (int instance = 2; instance <= count; instance++) {
                TableText one = copy.with(INSTANCE, TomlValue.number(instance));
                split = split.inserted(
                        STEP,
                        place + instance - 1,
                        balloon.map(number -> one.with("balloon", number)).orElse(one));
            }
            return split;
        });
    }

    public void remove(int place) {
        change(plan -> plan.without(STEP, place));
    }

    /** @param to its place once it was moved */
    public void move(int place, int to) {
        change(plan -> plan.moved(STEP, place, to));
    }

    public boolean canUndo() {
        return !before.isEmpty();
    }

    public void undo() {
        if (canUndo()) {
            take(before.pop());
        }
    }

    /** Places of the steps about which something is open. */
    public List<Integer> openSteps() {
        List<Integer> places = new ArrayList<>();
        open().forEach(point -> point.step().ifPresent(places::add));
        return IntStream.range(0, steps().size())
                .boxed()
                .filter(places::contains)
                .toList();
    }

    /** Keys that a step is no check without. */
    public List<String> missing(int place) {
        return open().stream()
                .filter(point -> point.step().equals(OptionalInt.of(place)))
                .flatMap(point -> point.missing().stream())
                .distinct()
                .toList();
    }

    private void take(PlanText other) {
        text = other;
        reading = reader.read(other.text());
    }
}
