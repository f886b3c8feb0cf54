package org.tenthwise.app.ui.form;

import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.app.session.Reply;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.session.State;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.ui.shell.LedgerTasks;

/** The run a form is about, as the ledger has it. */
public final class CurrentRun {

    /** What a form asks of the run. */
    @FunctionalInterface
    public interface Verb {

        /** On the thread of the ledger. */
        Reply of(RunSession session) throws CouldNotSave;
    }

    private record Loaded(State state, Suggestions known) {}

    private final RunSession session;
    private final Runs shop;
    private final LedgerTasks tasks;
    private final ReadOnlyObjectWrapper<Optional<State>> state = new ReadOnlyObjectWrapper<>(Optional.empty());

    public CurrentRun(RunSession session, Runs shop, LedgerTasks tasks) {
        this.session = session;
        this.shop = shop;
        this.tasks = tasks;
    }

    public RunSession session() {
        return session;
    }

    public LedgerTasks tasks() {
        return tasks;
    }

    /** Absent until it was loaded. */
    public ReadOnlyObjectProperty<Optional<State>> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** @param there is given the run and the ready answers of the runs so far */
    public void load(BiConsumer<State, Suggestions> there) {
        tasks.run(this::loaded, loaded -> {
            state.set(Optional.of(loaded.state()));
            there.accept(loaded.state(), loaded.known());
        });
    }

    private Loaded loaded() {
        State now = session.state();
        return new Loaded(now, Suggestions.at(now.inHand(), now.sheet().plan(), shop));
    }

    /**
     * Asks something of the run. Meanwhile the form can ask nothing more.
     *
     * @param taken on the screen thread, when it is on the disk
     */
    public void ask(FormViewModel form, Verb verb, Consumer<State> taken) {
        form.busy(true);
        tasks.ask(() -> verb.of(session), taken, () -> form.busy(false));
    }
}
