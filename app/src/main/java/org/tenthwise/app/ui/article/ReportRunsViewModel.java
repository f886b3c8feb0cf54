package org.tenthwise.app.ui.article;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.app.firstarticle.ReportShelf;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.text.Dates;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** Which closed runs of a part number a report joins: a touch ticks one, another takes the tick off. */
public final class ReportRunsViewModel {

    private final String part;
    private final ReportShelf shelf;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final ReadOnlyObjectWrapper<List<RunFacts>> runs = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<Set<String>> ticked = new ReadOnlyObjectWrapper<>(Set.of());

    public ReportRunsViewModel(String part, ReportShelf shelf, LedgerTasks tasks, Words words, Navigator navigator) {
        this.part = part;
        this.shelf = shelf;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
    }

    public void load() {
        tasks.run(() -> shelf.closed(part), runs::set);
    }

    /** The one last worked on first. */
    public ReadOnlyObjectProperty<List<RunFacts>> runsProperty() {
        return runs.getReadOnlyProperty();
    }

    /** Ids of those that are ticked. */
    public ReadOnlyObjectProperty<Set<String>> tickedProperty() {
        return ticked.getReadOnlyProperty();
    }

    public String title(RunFacts run) {
        return words.say(
                "report.run.row",
                run.serial(),
                words.say("ask.part-revision", run.part(), run.revision()),
                new Dates(words).day(run.lastAt()));
    }

    /** Which run, and whether it is ticked. */
    public String line(RunFacts run) {
        return words.say(
                "report.run.line",
                run.id(),
                words.say(ticked.get().contains(run.id()) ? "planning.ticks.on" : "planning.ticks.off"));
    }

    public void touch(RunFacts run) {
        Set<String> now = new TreeSet<>(ticked.get());
        if (!now.remove(run.id())) {
            now.add(run.id());
        }
        ticked.set(now);
    }

    /** How many are ticked, or that there is none to tick. */
    public String said() {
        return runs.get().isEmpty()
                ? words.say("report.refused.no-closed", part)
                : words.say("report.runs.count", ticked.get().size(), runs.get().size());
    }

    public boolean canGoOn() {
        return !ticked.get().isEmpty();
    }

    /** In the order they were begun: that of the columns. */
    public void goOn() {
        if (canGoOn()) {
            navigator.askReport(
                    part,
                    runs.get().stream()
                            .filter(run -> ticked.get().contains(run.id()))
                            .sorted(Comparator.comparing(RunFacts::begun))
                            .map(RunFacts::id)
                            .toList());
        }
    }
}
