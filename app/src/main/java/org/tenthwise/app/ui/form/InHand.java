package org.tenthwise.app.ui.form;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.RunSummary;
import org.tenthwise.app.session.Shop;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.shell.Errands;

/** The run a form is about, as the ledger has it. */
public final class InHand {

    private record Loaded(State state, List<RunSummary> runs) {
    }

    private final RunSession session;
    private final Shop shop;
    private final Errands errands;
    private final ReadOnlyObjectWrapper<Optional<State>> state = new ReadOnlyObjectWrapper<>(Optional.empty());

    public InHand(RunSession session, Shop shop, Errands errands) {
        this.session = session;
        this.shop = shop;
        this.errands = errands;
    }

    public RunSession session() {
        return session;
    }

    public Errands errands() {
        return errands;
    }

    /** Absent until it was loaded. */
    public ReadOnlyObjectProperty<Optional<State>> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** @param there is given the run and the ready answers of the runs so far */
    public void load(BiConsumer<State, Known> there) {
        errands.run(() -> new Loaded(session.state(), shop.runs()), loaded -> {
            state.set(Optional.of(loaded.state()));
            there.accept(loaded.state(), new Known(loaded.runs()));
        });
    }
}
