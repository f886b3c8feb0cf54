package org.tenthwise.app.ui.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.text.IssueWords;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.editing.PartialCheck;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanInHand.OpenPoint;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.Template;
import org.tenthwise.model.words.Words;

/** The steps of a plan being made or changed: which is in hand, what is open, and what can be done to them. */
public final class PlanViewModel {

    /**
     * A step, as the list has it.
     *
     * @param title its number, its balloon and its name
     * @param line its kind and what the drawing asks
     * @param open how much is open about it
     */
    public record PlanStepRow(String title, String line, int open) {}

    /** What can be done to the step in hand. */
    public enum StepDeed {
        CHANGE,
        ADD,
        COPY,
        SPLIT,
        EARLIER,
        LATER,
        TAKE_OUT,
        KEEP_TEMPLATE
    }

    private final String name;
    private final PlanInHand plan;
    private final PlanDesk desk;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final ReadOnlyObjectWrapper<List<PlanStepRow>> rows = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyIntegerWrapper inHand = new ReadOnlyIntegerWrapper(0);
    private final ReadOnlyObjectWrapper<List<String>> open = new ReadOnlyObjectWrapper<>(List.of());
    private final PartialCheck partial = new PartialCheck();
    private String kept;

    public PlanViewModel(
            String name, PlanInHand plan, PlanDesk desk, LedgerTasks tasks, Words words, Navigator navigator) {
        this.name = name;
        this.plan = plan;
        this.desk = desk;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
        this.kept = plan.text().text();
        load();
    }

    public ReadOnlyObjectProperty<List<PlanStepRow>> rowsProperty() {
        return rows.getReadOnlyProperty();
    }

    /** Place of the step in hand, from 0. */
    public ReadOnlyIntegerProperty inHandProperty() {
        return inHand.getReadOnlyProperty();
    }

    /** What is open about the step in hand and the plan as a whole; with nothing open, why it was issued. */
    public ReadOnlyObjectProperty<List<String>> openProperty() {
        return open.getReadOnlyProperty();
    }

    public ObservableValue<String> countValue() {
        return rows.map(all -> words.say("planning.open", plan.open().size()));
    }

    public ObservableValue<String> partValue() {
        return rows.map(all -> words.say("planning.part", head("part"), head("revision"), head("issue")));
    }

    private String head(String key) {
        return plan.text().head().says(key).orElse("");
    }

    /** Shows the plan as it is now, and keeps it as a draft if it is another. */
    public void load() {
        int last = plan.steps().size() - 1;
        inHand.set(Math.max(0, Math.min(inHand.get(), last)));
        rows.set(rowsNow());
        open.set(openNow());
        if (!plan.text().text().equals(kept)) {
            kept = plan.text().text();
            tasks.run(
                    () -> {
                        desk.keep(name, plan.text());
                        return true;
                    },
                    done -> {});
        }
    }

    private List<PlanStepRow> rowsNow() {
        List<OpenPoint> all = plan.open();
        return IntStream.range(0, plan.steps().size())
                .mapToObj(place -> row(plan.steps().get(place), (int) all.stream()
                        .filter(point -> point.step().equals(OptionalInt.of(place)))
                        .count()))
                .toList();
    }

    private PlanStepRow row(TableText step, int openHere) {
        String number = step.value("number").orElse("");
        Optional<String> balloon = step.says("balloon").filter(text -> !text.equals(number));
        String called = step.says("name").orElseGet(() -> words.say("planning.unnamed"));
        String title = balloon.map(text -> words.say("planning.step-ballooned", number, text, called))
                .orElseGet(() -> words.say("planning.step", number, called));
        List<String> said = new ArrayList<>();
        step.says("kind").ifPresent(said::add);
        step.says("requirement").or(() -> step.says("drawing")).ifPresent(said::add);
        if (openHere > 0) {
            said.add(words.say("planning.open", openHere));
        }
        return new PlanStepRow(title, words.list(said), openHere);
    }

    /**
     * What is missing goes by its name; what is wrong is said as the plan rules say it. Then the issue it is, or was.
     */
    private List<String> openNow() {
        Stream<String> points = plan.open().stream()
                .filter(point -> point.step().isEmpty() || point.step().equals(OptionalInt.of(inHand.get())))
                .map(point -> point.missing()
                        .map(key -> words.say("planning.missing", NamedKey.say(key, words)))
                        .orElseGet(() -> words.say(point.problem().what())))
                .distinct();
        Stream<String> issued =
                plan.plan().map(new IssueWords(words)::lines).stream().flatMap(List::stream);
        return Stream.concat(points, issued).toList();
    }

    public void take(int place) {
        inHand.set(place);
        open.set(openNow());
    }

    /**
     * Goes to the next step about which something is open, round the plan, and asks for it; where none is, to what is
     * open outside the order of work, and last to the head.
     */
    public void nextOpen() {
        List<Integer> openSteps = plan.openSteps();
        if (openSteps.isEmpty()) {
            plan.openBeside().ifPresentOrElse(open -> navigator.planBeside(plan, open), this::openHead);
            return;
        }
        take(openSteps.stream()
                .filter(place -> place >= inHand.get())
                .findFirst()
                .orElse(openSteps.get(0)));
        navigator.planStep(name, plan, inHand.get());
    }

    private void openHead() {
        if (!plan.open().isEmpty()) {
            navigator.planHead(name, plan);
        }
    }

    public boolean can(StepDeed deed) {
        int steps = plan.steps().size();
        return switch (deed) {
            case ADD -> true;
            case CHANGE, COPY, TAKE_OUT, KEEP_TEMPLATE -> steps > 0;
            case SPLIT -> steps > 0 && count() > 1;
            case EARLIER -> inHand.get() > 0;
            case LATER -> inHand.get() < steps - 1;
        };
    }

    /** How many alike the step in hand looks after. */
    private int count() {
        TableText step = plan.steps().get(inHand.get());
        return step.value("instance").isPresent()
                ? 1
                : step.value("count")
                        .filter(count -> count.matches("\\d{1,3}"))
                        .map(Integer::parseInt)
                        .orElse(1);
    }

    public void act(StepDeed deed) {
        if (!can(deed)) {
            return;
        }
        int place = inHand.get();
        switch (deed) {
            case CHANGE -> navigator.planStep(name, plan, place);
            case ADD -> navigator.templates(this::add);
            case COPY -> {
                plan.copy(place);
                inHand.set(place + 1);
            }
            case SPLIT -> plan.split(place, count());
            case EARLIER -> {
                plan.move(place, place - 1);
                inHand.set(place - 1);
            }
            case LATER -> {
                plan.move(place, place + 1);
                inHand.set(place + 1);
            }
            case TAKE_OUT -> plan.remove(place);
            case KEEP_TEMPLATE -> navigator.keepTemplate(plan.steps(), place);
        }
        load();
    }

    /** Behind the step in hand and in its operation; the first of them is in hand then, and what is open is asked. */
    private void add(Template template) {
        int next = plan.steps().isEmpty() ? 0 : inHand.get() + 1;
        Optional<String> operation = plan.steps().isEmpty()
                ? plan.text().list("operation").stream().findFirst().flatMap(first -> first.value("number"))
                : plan.steps().get(inHand.get()).value("operation");
        plan.add(next, template, operation);
        inHand.set(next);
        load();
        navigator.planStep(name, plan, next);
    }

    /** Whether there is a step whose balloon could be placed. */
    public boolean hasSteps() {
        return !plan.steps().isEmpty();
    }

    public void balloons() {
        navigator.balloons(name, plan, inHand.get());
    }

    /** Where on the outline the step in hand stands. */
    public void marks() {
        navigator.marks(name, plan, inHand.get());
    }

    public boolean canUndo() {
        return plan.canUndo();
    }

    public void undo() {
        plan.undo();
        load();
    }

    public void head() {
        navigator.planHead(name, plan);
    }

    /** Whether nothing is open, so that it can be issued. */
    public boolean canIssue() {
        return plan.plan().isPresent();
    }

    /** What it changes of the plan in force. */
    public void changes() {
        navigator.changes(name, plan, partial);
    }

    public void issue() {
        navigator.issue(name, plan, partial);
    }
}
