package org.tenthwise.app.ui.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.model.words.Words;

/** Which of several checks are meant: a touch ticks one, another touch takes the tick off. */
public final class TicksViewModel {

    private final List<TableText> steps;
    private final Words words;
    private final Consumer<List<TableText>> ticked;
    private final ReadOnlyObjectWrapper<Set<Integer>> ticks;

    /**
     * @param first places of those ticked at first, from 0
     * @param ticked is handed at least one, in the order of the steps
     */
    public TicksViewModel(List<TableText> steps, Set<Integer> first, Words words, Consumer<List<TableText>> ticked) {
        this.steps = List.copyOf(steps);
        this.words = words;
        this.ticked = ticked;
        this.ticks = new ReadOnlyObjectWrapper<>(Set.copyOf(first));
    }

    /** Places of those that are ticked, from 0. */
    public ReadOnlyObjectProperty<Set<Integer>> ticksProperty() {
        return ticks.getReadOnlyProperty();
    }

    public int count() {
        return steps.size();
    }

    /** Its name, and in the plan its number. */
    public String title(int place) {
        TableText step = steps.get(place);
        return words.say(
                "planning.step",
                step.value("number").orElseGet(() -> String.valueOf(place + 1)),
                step.says("name").orElseGet(() -> words.say("planning.unnamed")));
    }

    /** Its kind, and whether it is ticked. */
    public String line(int place) {
        List<String> said = new ArrayList<>();
        steps.get(place).says("kind").ifPresent(said::add);
        said.add(words.say(ticks.get().contains(place) ? "planning.ticks.on" : "planning.ticks.off"));
        return words.list(said);
    }

    public void touch(int place) {
        Set<Integer> now = new TreeSet<>(ticks.get());
        if (!now.remove(place)) {
            now.add(place);
        }
        ticks.set(now);
    }

    /** How many are ticked. */
    public String said() {
        return words.say("planning.ticks.count", ticks.get().size(), steps.size());
    }

    public boolean canGoOn() {
        return !ticks.get().isEmpty();
    }

    public void goOn() {
        if (canGoOn()) {
            ticked.accept(new TreeSet<>(ticks.get()).stream().map(steps::get).toList());
        }
    }
}
