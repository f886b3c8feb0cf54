package org.tenthwise.app.ui.documents;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.shell.Deed;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** What documents prove of a run, open or closed; looked up anew each time it is shown. Screen thread only. */
public final class DocumentsViewModel {

    private final RunSession session;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final ReadOnlyObjectWrapper<Optional<State>> state = new ReadOnlyObjectWrapper<>(Optional.empty());

    public DocumentsViewModel(RunSession session, LedgerTasks tasks, Words words, Navigator navigator) {
        this.session = session;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
    }

    /** Absent until it was loaded. */
    public ReadOnlyObjectProperty<Optional<State>> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** What is not settled first, each in the order of the plan. */
    public ObservableValue<List<DocumentRow>> rowsValue() {
        return state.map(now -> now.map(this::rows).orElse(List.of()));
    }

    private List<DocumentRow> rows(State now) {
        return now.sheet().documents().stream()
                .map(line -> DocumentRow.of(line, now.sheet(), words))
                .sorted(Comparator.comparing(DocumentRow::settled))
                .toList();
    }

    /** How many of them are not settled. */
    public ObservableValue<String> countValue() {
        return rowsValue().map(this::count);
    }

    private String count(List<DocumentRow> rows) {
        long open = rows.stream().filter(row -> !row.settled()).count();
        return open == 0 ? words.say("documents.all", rows.size()) : words.say("documents.count", open, rows.size());
    }

    public void load() {
        tasks.run(session::state, now -> state.set(Optional.of(now)));
    }

    /** Whether figures are asked for anywhere; before it was loaded not. */
    public ObservableValue<Boolean> takesFiguresValue() {
        return state.map(now -> now.stream()
                .flatMap(there -> there.sheet().documents().stream())
                .anyMatch(line -> !line.settled() && line.step().limits().isPresent()));
    }

    /** Which table of figures is taken. */
    public void chooseFile() {
        navigator.chooseFigures(session);
    }

    /** To the form where a document is asked for; where one is entered, or none can be, to the step itself. */
    public void take(DocumentRow row) {
        tasks.run(() -> session.goTo(row.step()), there -> {
            if (there.state().asked().asksDocument()) {
                navigator.form(Deed.DOCUMENT, session);
            } else {
                navigator.run(session);
            }
        });
    }
}
