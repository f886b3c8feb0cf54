package org.tenthwise.app.ui.settings;

import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.session.ShopNames;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** The machines of the shop, or its people: those of its runs and those that were only named. */
public final class ShopViewModel {

    private final ShopNames.Kind kind;
    private final Runs shop;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final ReadOnlyObjectWrapper<List<ShopNames.Name>> names = new ReadOnlyObjectWrapper<>(List.of());

    ShopViewModel(ShopNames.Kind kind, Runs shop, LedgerTasks tasks, Words words, Navigator navigator) {
        this.kind = kind;
        this.shop = shop;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
    }

    public ReadOnlyObjectProperty<List<ShopNames.Name>> namesProperty() {
        return names.getReadOnlyProperty();
    }

    void load() {
        tasks.run(() -> shop.names().all(kind), names::set);
    }

    /** All of them in one line. */
    ObservableValue<String> value() {
        return names.map(
                all -> words.list(all.stream().map(ShopNames.Name::name).toList()));
    }

    boolean areMachines() {
        return kind == ShopNames.Kind.MACHINE;
    }

    /** What is known of one: of a machine how its register counts; of a person nothing. */
    public String line(ShopNames.Name name) {
        if (!areMachines()) {
            return "";
        }
        return name.known()
                .map(known -> words.say(
                        "settings.machine",
                        words.say("run.register.counts", known.register()),
                        words.say("machine.aim", known.usual())))
                .orElseGet(() -> words.say("settings.machine.unknown"));
    }

    /** Asks for another name. */
    public void add() {
        navigator.name(kind);
    }

    /** Asks how the register of a machine counts. */
    public void tell(ShopNames.Name machine) {
        navigator.register(machine);
    }

    /** Takes a name off the list that no run has. */
    public void remove(ShopNames.Name name) {
        tasks.run(
                () -> {
                    shop.names().remove(kind, name.name());
                    return true;
                },
                done -> load());
    }
}
