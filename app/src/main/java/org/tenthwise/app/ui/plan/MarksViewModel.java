package org.tenthwise.app.ui.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.OutlinePicture;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.editing.MarkText;
import org.tenthwise.checklists.editing.OutlineText;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.Outline;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Words;

/**
 * Where the checks of a plan stand on the outline. One check is in hand; a touch on the outline puts it on what is
 * touched, and the next touch moves it.
 */
public final class MarksViewModel {

    /**
     * A check, as the list has it.
     *
     * @param title its number and its name
     * @param line where it stands
     */
    public record MarkRow(String title, String line, Optional<Mark> mark) {}

    private final PlanInHand plan;
    private final ChangesHere changes;
    private final Words words;
    private final Navigator navigator;
    private final Unit unit;
    private final Optional<Outline> outline;
    private final ReadOnlyObjectWrapper<List<MarkRow>> rows = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyIntegerWrapper inHand = new ReadOnlyIntegerWrapper(0);
    private final ReadOnlyStringWrapper toDo = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<Optional<OutlinePicture>> drawn = new ReadOnlyObjectWrapper<>(Optional.empty());

    /** @param place of the check in hand, from 0 */
    public MarksViewModel(
            String name,
            PlanInHand plan,
            int place,
            PlanDesk desk,
            LedgerTasks tasks,
            Words words,
            Navigator navigator) {
        this.plan = plan;
        this.changes = new ChangesHere(name, plan, desk, tasks);
        this.words = words;
        this.navigator = navigator;
        unit = plan.text().unit();
        outline = OutlineText.of(plan.text())
                .outline(unit, plan.plan().flatMap(Plan::outline))
                .filter(part -> part.greatestDiameter().signum() > 0);
        inHand.set(place);
        show();
    }

    public ReadOnlyObjectProperty<List<MarkRow>> rowsProperty() {
        return rows.getReadOnlyProperty();
    }

    /** Place of the check in hand, from 0. */
    public ReadOnlyIntegerProperty inHandProperty() {
        return inHand.getReadOnlyProperty();
    }

    /** What a touch on the outline does. */
    public ReadOnlyStringProperty toDoProperty() {
        return toDo.getReadOnlyProperty();
    }

    /** The part, and on it what the check in hand stands on; absent without an outline. */
    public ReadOnlyObjectProperty<Optional<OutlinePicture>> drawnProperty() {
        return drawn.getReadOnlyProperty();
    }

    /** Shows the marks as they are now: one can have been told by its figures meanwhile. */
    public void load() {
        changes.isAnother();
        show();
    }

    private void show() {
        List<TableText> steps = plan.steps();
        rows.set(steps.stream().map(this::row).toList());
        Optional<MarkRow> row = rows.get().stream().skip(inHand.get()).findFirst();
        drawn.set(outline.map(
                part -> OutlinePicture.small(part, row.flatMap(MarkRow::mark), words.say("planning.outline.drawn"))));
        toDo.set(
                outline.isEmpty()
                        ? words.say("planning.marks.no-outline")
                        : row.map(one -> words.say(
                                        one.mark().isPresent() ? "planning.marks.move" : "planning.marks.place",
                                        one.title()))
                                .orElse(""));
    }

    private MarkRow row(TableText step) {
        Optional<Mark> mark = MarkText.of(step, unit);
        String where = mark.map(
                        spot -> words.say("planning.marks.at", said(spot.at()), unit.symbol(), said(spot.diameter())))
                .orElseGet(() -> words.say("planning.marks.nowhere"));
        return new MarkRow(
                words.say(
                        "planning.step",
                        step.value("number").orElse(""),
                        step.says("name").orElseGet(() -> words.say("planning.unnamed"))),
                where,
                mark);
    }

    private String said(Length length) {
        return length.in(unit).toPlainString();
    }

    public void take(int place) {
        inHand.set(place);
        show();
    }

    /** Puts the check in hand on what is touched; a touch beside the part does nothing. */
    public void touch(Frame frame, Point spot) {
        drawn.get().flatMap(picture -> picture.touched(frame, spot)).ifPresent(mark -> {
            Outline part = outline.orElseThrow();
            BigDecimal at = rounded(mark.at()).min(part.length().in(unit));
            BigDecimal diameter =
                    rounded(mark.diameter()).min(part.greatestDiameter().in(unit));
            plan.changeStep(inHand.get(), step -> MarkText.put(step, NamedKey.before(MarkText.KEY), at, diameter));
            load();
        });
    }

    /** To the hundredth of a millimetre, the thousandth of an inch: nobody points closer. */
    private BigDecimal rounded(Length length) {
        BigDecimal figure = length.in(unit)
                .setScale(unit == Unit.MILLIMETRE ? 2 : 3, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return figure.scale() < 0 ? figure.setScale(0, RoundingMode.UNNECESSARY) : figure;
    }

    /** Lets the spot be told by its figures. */
    public void byFigures() {
        if (canTouch()) {
            navigator.markByFigures(plan, inHand.get());
        }
    }

    /** Whether there is an outline and a check to stand on it. */
    public boolean canTouch() {
        return outline.isPresent() && !rows.get().isEmpty();
    }

    /** Whether another check stands nowhere yet. */
    public boolean hasNext() {
        return outline.isPresent() && next().isPresent();
    }

    /** On to the next check that stands nowhere. */
    public void goOn() {
        next().ifPresent(this::take);
    }

    private Optional<Integer> next() {
        int count = rows.get().size();
        return IntStream.range(1, count)
                .map(step -> (inHand.get() + step) % count)
                .filter(place -> rows.get().get(place).mark().isEmpty())
                .boxed()
                .findFirst();
    }

    /** Whether a mark was set here that can be taken back. */
    public boolean canUndo() {
        return changes.canUndo();
    }

    /** Takes the last mark back; its check is in hand again. */
    public void undo() {
        if (canUndo()) {
            List<MarkRow> before = rows.get();
            changes.undo();
            show();
            IntStream.range(0, before.size())
                    .filter(row -> !before.get(row).equals(rows.get().get(row)))
                    .findFirst()
                    .ifPresent(this::take);
        }
    }
}
