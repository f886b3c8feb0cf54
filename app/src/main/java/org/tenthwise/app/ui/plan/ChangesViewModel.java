package org.tenthwise.app.ui.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.text.ComparisonWords;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.editing.PartialCheck;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.model.compare.CharacteristicChange;
import org.tenthwise.model.compare.PlanComparison;
import org.tenthwise.model.compare.PlanDifference;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.words.Words;

/**
 * What a plan changes of the one in force, check by check, and which of them a partial check takes in: proposed here,
 * said by a person. With any other plan it is compared only.
 */
public final class ChangesViewModel {

    /**
     * A check that is otherwise, or what is otherwise of the whole part.
     *
     * @param told what is otherwise, a line each
     * @param proposed what it is called by in the proposal of a partial check; absent where it is not proposed
     */
    public record ChangeRow(String title, String line, List<String> told, Optional<String> proposed) {}

    private final String name;
    private final PlanInHand plan;
    private final PartialCheck partial;
    private final PlanDesk desk;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final ComparisonWords comparing;
    private final ReadOnlyObjectWrapper<List<ChangeRow>> rows = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyIntegerWrapper inHand = new ReadOnlyIntegerWrapper(0);
    private final ReadOnlyObjectWrapper<String> compared = new ReadOnlyObjectWrapper<>("");
    private Optional<String> other = Optional.empty();
    private Optional<String> until = Optional.empty();

    /** @param plan with nothing open */
    public ChangesViewModel(
            String name,
            PlanInHand plan,
            PartialCheck partial,
            PlanDesk desk,
            LedgerTasks tasks,
            Words words,
            Navigator navigator) {
        this.name = name;
        this.plan = plan;
        this.partial = partial;
        this.desk = desk;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
        this.comparing = new ComparisonWords(words);
    }

    public ReadOnlyObjectProperty<List<ChangeRow>> rowsProperty() {
        return rows.getReadOnlyProperty();
    }

    /** Place of the row in hand, from 0. */
    public ReadOnlyIntegerProperty inHandProperty() {
        return inHand.getReadOnlyProperty();
    }

    /** Which two are compared; empty where there is nothing to compare with. */
    public ReadOnlyObjectProperty<String> comparedProperty() {
        return compared.getReadOnlyProperty();
    }

    /** How many are proposed of which nobody has said anything yet. */
    public ObservableValue<String> leftValue() {
        return rows.map(all -> words.say("planning.changes.left.number", other.isEmpty() ? partial.unanswered() : 0));
    }

    /** Two plans, as they were found; absent where one is not there. */
    private record Two(Optional<PlanText> before, Optional<PlanText> after) {}

    public void load() {
        tasks.run(
                () -> new Two(
                        other.isPresent() ? desk.open(other.get()) : desk.inForce(name),
                        until.isPresent() ? desk.open(until.get()) : Optional.of(plan.text())),
                this::compare);
    }

    /** With another plan of the folder, its draft, or an issue in force before; or any two of them. */
    public void chooseOther() {
        navigator.otherPlan((from, to) -> {
            other = Optional.of(from);
            until = to;
            inHand.set(0);
            load();
        });
    }

    private void compare(Two two) {
        Optional<PlanText> found = two.before();
        Optional<Plan> before = found.map(PlanInHand::new).flatMap(PlanInHand::plan);
        Optional<Plan> after = two.after().map(PlanInHand::new).flatMap(PlanInHand::plan);
        if (before.isEmpty() || after.isEmpty()) {
            compared.set("");
            rows.set(List.of(
                    sentence(words.say(found.isEmpty() ? "planning.changes.none" : "planning.changes.not-whole"))));
            return;
        }
        PlanComparison comparison = PlanComparison.of(before.get(), after.get());
        if (other.isEmpty()) {
            partial.propose(
                    found.orElseThrow().text(),
                    plan,
                    comparison.proposed().stream()
                            .map(step -> called(comparison.after(), step))
                            .distinct()
                            .toList());
        }
        String from = comparing.plan(comparison.before());
        compared.set(
                until.isEmpty()
                        ? words.say("planning.changes.from", from)
                        : words.say("compare.plans", from, comparing.plan(comparison.after())));
        rows.set(rows(comparison));
    }

    private ChangeRow sentence(String sentence) {
        return new ChangeRow(words.say("planning.changes.outcome"), "", List.of(sentence), Optional.empty());
    }

    /** As it stands in the plan file: its balloon, and without one its name. */
    private static String called(Plan plan, Step step) {
        return plan.balloon(step).map(Object::toString).orElse(step.name());
    }

    private List<ChangeRow> rows(PlanComparison comparison) {
        List<ChangeRow> all = new ArrayList<>();
        all.add(new ChangeRow(
                words.say("planning.changes.outcome"), "", comparing.outcome(comparison), Optional.empty()));
        if (!comparison.head().isEmpty()) {
            all.add(new ChangeRow(
                    words.say("compare.head"),
                    kinds(comparison.head()),
                    comparison.head().stream().map(comparing::difference).toList(),
                    Optional.empty()));
        }
        comparison.changes().forEach(change -> all.add(row(comparison, change)));
        Map<Integer, CharacteristicChange> own = comparison.changes().stream()
                .filter(change -> !change.isGone())
                .collect(Collectors.toMap(change -> change.step().number(), Function.identity()));
        comparison.proposed().stream()
                .filter(step -> !own.containsKey(step.number()))
                .forEach(step -> all.add(unchanged(comparison.after(), step)));
        return all;
    }

    private ChangeRow row(PlanComparison comparison, CharacteristicChange change) {
        List<String> told = comparing.told(change);
        Optional<String> proposed =
                comparison.proposes(change) ? Optional.of(called(comparison.after(), change.step())) : Optional.empty();
        return new ChangeRow(
                words.say(
                        "planning.changes.row",
                        comparing.called(change),
                        words.readable(change.step().name())),
                line(change.differences().isEmpty() ? told.get(0) : kinds(change.differences()), proposed),
                told,
                proposed);
    }

    private ChangeRow unchanged(Plan after, Step step) {
        Optional<String> proposed = Optional.of(called(after, step));
        return new ChangeRow(
                words.say("planning.changes.row", comparing.called(after, step), step.name()),
                line(words.say("planning.changes.by-head"), proposed),
                List.of(words.say("planning.changes.by-head")),
                proposed);
    }

    private String kinds(List<PlanDifference> differences) {
        return words.list(differences.stream()
                .map(one -> words.say("compare.kind", one.kind()))
                .distinct()
                .toList());
    }

    private String line(String kinds, Optional<String> proposed) {
        return proposed.map(called -> words.list(List.of(kinds, said(called)))).orElse(kinds);
    }

    private String said(String called) {
        Optional<Boolean> answer = other.isPresent() ? Optional.of(true) : partial.answer(called);
        return answer.map(again -> words.say(again ? "planning.changes.again" : "planning.changes.not-again"))
                .orElseGet(() -> words.say("planning.changes.proposed"));
    }

    public void take(int place) {
        inHand.set(place);
    }

    /** Whether a person can say of the row in hand if it is checked again. */
    public boolean canAnswer() {
        return other.isEmpty()
                && inHand.get() < rows.get().size()
                && rows.get().get(inHand.get()).proposed().isPresent();
    }

    /** Says so of the row in hand, and goes on to the next of which nothing is said. */
    public void answer(boolean again) {
        if (!canAnswer()) {
            return;
        }
        partial.answer(rows.get().get(inHand.get()).proposed().orElseThrow(), again);
        int here = inHand.get();
        load();
        IntStream.concat(IntStream.range(here, rows.get().size()), IntStream.range(0, here))
                .filter(place -> rows.get().get(place).proposed().stream()
                        .anyMatch(called -> partial.answer(called).isEmpty()))
                .findFirst()
                .ifPresent(inHand::set);
    }
}
