package org.tenthwise.app.ui.matters;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.app.matters.MatterBook;
import org.tenthwise.app.matters.OpenMatter;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** What is open over all runs, a row each. A touch leads to where it is worked off. */
public final class MattersViewModel {

    private final MatterBook book;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final MatterRow row;
    private final ReadOnlyObjectWrapper<Optional<List<OpenMatter>>> open =
            new ReadOnlyObjectWrapper<>(Optional.empty());

    public MattersViewModel(MatterBook book, LedgerTasks tasks, Words words, Navigator navigator) {
        this.book = book;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
        this.row = new MatterRow(words);
    }

    /** Absent until they were looked up. */
    public ReadOnlyObjectProperty<Optional<List<OpenMatter>>> openProperty() {
        return open.getReadOnlyProperty();
    }

    public void load() {
        tasks.run(book::open, found -> open.set(Optional.of(found)));
    }

    /** How many there are, or why there is no row. */
    public String count() {
        return open.get()
                .map(all -> all.isEmpty() ? words.say("matters.none") : words.say("matters.count", all.size()))
                .orElseGet(() -> words.say("home.no-runs.not-yet"));
    }

    /** What it is, and of which part or gauge. */
    public String title(OpenMatter of) {
        return row.title(of);
    }

    /** At which check, since when, and what is to be done. */
    public String line(OpenMatter of) {
        return words.say(
                "matters.line",
                row.where(of),
                words.say(
                        of.canBeSettled() ? "matters.do.sign" : "matters.do." + (isOpenRun(of) ? "run" : "documents")));
    }

    private static boolean isOpenRun(OpenMatter of) {
        return of.run().filter(run -> run.open()).isPresent();
    }

    /** Leads to the signature for it, or to where it is done. */
    public void take(OpenMatter of) {
        if (of.canBeSettled()) {
            navigator.settleMatter(of);
        } else {
            of.run().ifPresent(run -> navigator.record(run.id()));
        }
    }
}
