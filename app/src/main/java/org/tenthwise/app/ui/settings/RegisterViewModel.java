package org.tenthwise.app.ui.settings;

import java.util.List;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.session.ShopNames;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.RegisterFields;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.words.Words;

/**
 * How the register of a machine counts and what is usually aimed at on it, for the shop. It decides how far a cut goes,
 * so somebody says it by name, and it is kept in the ledger.
 */
public final class RegisterViewModel {

    private static final int MOST = 40;

    private final ShopNames.Name machine;
    private final Runs shop;
    private final LedgerTasks tasks;
    private final Navigator navigator;
    private final RegisterFields asked;
    private final Field<String> by;
    private final FormViewModel form;

    public RegisterViewModel(ShopNames.Name machine, Runs shop, LedgerTasks tasks, Words words, Navigator navigator) {
        this.machine = machine;
        this.shop = shop;
        this.tasks = tasks;
        this.navigator = navigator;
        asked = RegisterFields.of(words);
        by = Field.words("by", words.say("settings.by"), words.say("settings.by.question"), true, MOST);
        machine.known().ifPresent(known -> {
            asked.register().choice().choose(known.register());
            asked.aim().choice().choose(known.usual());
        });
        form = new FormViewModel(
                List.of(asked.register(), asked.aim(), by), words, words.say("machine.act"), this::keep);
        form.aboutProperty().set(machine.name());
    }

    public FormViewModel form() {
        return form;
    }

    /** Offers the people of the shop. */
    public void load() {
        tasks.run(() -> shop.names().people(), by::offer);
    }

    private void keep() {
        ShopEvent.MachineKnown known = new ShopEvent.MachineKnown(machine.name(), asked.counts(), asked.usual());
        form.busy(true);
        tasks.run(
                () -> {
                    shop.tellMachine(known, by.reads());
                    return true;
                },
                done -> navigator.back(),
                () -> form.busy(false));
    }
}
