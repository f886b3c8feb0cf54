package org.tenthwise.app.ui.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.tenthwise.app.picture.OutlinePicture;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.editing.MarkText;
import org.tenthwise.checklists.editing.OutlineText;
import org.tenthwise.checklists.editing.OutlineText.Side;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.ProfileElement;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Words;

/** The outline of the part, element by element from the left end, outside and inside; drawn as it grows. */
public final class OutlineViewModel {

    /**
     * An element, as the list has it.
     *
     * @param title its diameter, for a taper both
     * @param line its length
     */
    public record ElementRow(String title, String line) {}

    /** What can be done to the element in hand. */
    public enum ElementDeed {
        CHANGE,
        ADD,
        LEFT,
        RIGHT,
        TAKE_OUT
    }

    private final PlanInHand plan;
    private final ChangesHere changes;
    private final Words words;
    private final Navigator navigator;
    private final Unit unit;
    private final ReadOnlyObjectWrapper<Side> side = new ReadOnlyObjectWrapper<>(Side.OUTSIDE);
    private final ReadOnlyObjectWrapper<List<ElementRow>> rows = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyIntegerWrapper inHand = new ReadOnlyIntegerWrapper(0);
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<Optional<Picture>> drawn = new ReadOnlyObjectWrapper<>(Optional.empty());

    public OutlineViewModel(
            String name, PlanInHand plan, PlanDesk desk, LedgerTasks tasks, Words words, Navigator navigator) {
        this.plan = plan;
        this.changes = new ChangesHere(name, plan, desk, tasks);
        this.words = words;
        this.navigator = navigator;
        unit = plan.text().unit();
        show();
    }

    /** Whose elements are listed. */
    public ReadOnlyObjectProperty<Side> sideProperty() {
        return side.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<List<ElementRow>> rowsProperty() {
        return rows.getReadOnlyProperty();
    }

    /** Place of the element in hand, from 0. */
    public ReadOnlyIntegerProperty inHandProperty() {
        return inHand.getReadOnlyProperty();
    }

    /** How long and how thick the part is, what of it cannot be, and what has to be looked at again. */
    public ReadOnlyStringProperty saidProperty() {
        return said.getReadOnlyProperty();
    }

    /** The part as far as there is one. */
    public ReadOnlyObjectProperty<Optional<Picture>> drawnProperty() {
        return drawn.getReadOnlyProperty();
    }

    /** Shows the outline as it is now: an element can have been told meanwhile. */
    public void load() {
        int before = OutlineText.of(changes.before()).of(side.get()).size();
        if (changes.isAnother() && elements().size() > Math.max(before, 1)) {
            inHand.set(inHand.get() + 1);
        }
        show();
    }

    private List<ProfileElement> elements() {
        return OutlineText.of(plan.text()).of(side.get());
    }

    private void show() {
        OutlineText text = OutlineText.of(plan.text());
        inHand.set(Math.max(0, Math.min(inHand.get(), elements().size() - 1)));
        rows.set(elements().stream().map(this::row).toList());
        said.set(saidNow(text));
        drawn.set(text.outline(unit, plan.plan().flatMap(Plan::outline))
                .filter(outline -> outline.greatestDiameter().signum() > 0)
                .map(outline -> OutlinePicture.small(
                        outline,
                        elements().isEmpty()
                                ? Optional.empty()
                                : Optional.of(text.middle(side.get(), inHand.get(), unit)),
                        words.say("planning.outline.drawn"))));
    }

    private ElementRow row(ProfileElement element) {
        String from = element.diameter().toPlainString();
        String title = element.isSolid()
                ? words.say("planning.element.solid")
                : element.isTaper()
                        ? words.say(
                                "planning.element.taper", from, element.end().toPlainString())
                        : words.say("planning.element.diameter-of", from);
        return new ElementRow(
                title, words.say("planning.element.long", element.length().toPlainString(), unit.symbol()));
    }

    private String saidNow(OutlineText text) {
        if (text.outside().isEmpty()) {
            return words.say("planning.outline.none");
        }
        String size = words.say(
                "planning.outline.size",
                OutlineText.length(text.outside()).toPlainString(),
                unit.symbol(),
                text.outside().stream()
                        .flatMap(element -> Stream.of(element.diameter(), element.end()))
                        .reduce(BigDecimal.ZERO, BigDecimal::max)
                        .toPlainString());
        Stream<String> wrong =
                text.wrong(unit).map(message -> words.say("planning.outline.wrong", words.say(message))).stream();
        boolean isMarked =
                plan.steps().stream().anyMatch(step -> step.value(MarkText.KEY).isPresent());
        Stream<String> again =
                changes.canUndo() && isMarked ? Stream.of(words.say("planning.outline.marks")) : Stream.empty();
        return Stream.concat(Stream.of(size), Stream.concat(wrong, again)).collect(Collectors.joining(" "));
    }

    public void turnTo(Side other) {
        side.set(other);
        inHand.set(0);
        show();
    }

    public void take(int place) {
        inHand.set(place);
        show();
    }

    public boolean can(ElementDeed deed) {
        int count = elements().size();
        return switch (deed) {
            case ADD ->
                side.get() == Side.OUTSIDE
                        || !OutlineText.of(plan.text()).outside().isEmpty();
            case CHANGE -> count > 0;
            case TAKE_OUT -> count > (side.get() == Side.OUTSIDE ? 1 : 0);
            case LEFT -> inHand.get() > 0;
            case RIGHT -> inHand.get() < count - 1;
        };
    }

    public void act(ElementDeed deed) {
        if (!can(deed)) {
            return;
        }
        int place = inHand.get();
        switch (deed) {
            case CHANGE -> navigator.outlineElement(plan, side.get(), place, false);
            case ADD -> navigator.outlineElement(plan, side.get(), elements().isEmpty() ? 0 : place + 1, true);
            case LEFT -> swap(place, place - 1);
            case RIGHT -> swap(place, place + 1);
            case TAKE_OUT -> {
                List<ProfileElement> fewer = new ArrayList<>(elements());
                fewer.remove(place);
                change(fewer);
            }
        }
    }

    private void swap(int place, int other) {
        List<ProfileElement> moved = new ArrayList<>(elements());
        Collections.swap(moved, place, other);
        inHand.set(other);
        change(moved);
    }

    private void change(List<ProfileElement> elements) {
        plan.change(text -> OutlineText.of(text).with(side.get(), elements).into(text));
        load();
    }

    /** Whether something was changed here that can be taken back. */
    public boolean canUndo() {
        return changes.canUndo();
    }

    /** Takes the last change back. */
    public void undo() {
        changes.undo();
        show();
    }
}
