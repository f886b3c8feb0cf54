package org.tenthwise.app.ui.settings;

import java.util.List;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.session.ShopNames;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.Event;
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
    private final Field<Register> register;
    private final Field<Aim.ByLimits> aim;
    private final Field<String> by;
    private final FormViewModel form;

    public RegisterViewModel(ShopNames.Name machine, Runs shop, LedgerTasks tasks, Words words, Navigator navigator) {
        this.machine = machine;
        this.shop = shop;
        this.tasks = tasks;
        this.navigator = navigator;
        register = Field.choice(
                "register",
                words.say("machine.register"),
                words.say("machine.register.question"),
                counts -> words.say("run.register.counts", counts));
        aim = Field.choice(
                "aim",
                words.say("machine.aim"),
                words.say("machine.aim.question"),
                usual -> words.say("machine.aim", usual));
        by = Field.words("by", words.say("settings.by"), words.say("settings.by.question"), true, MOST);
        register.offer(List.of(Register.values()));
        aim.offer(List.of(Aim.ByLimits.values()));
        machine.known().ifPresent(known -> {
            register.choice().choose(known.register());
            aim.choice().choose(known.usual());
        });
        form = new FormViewModel(List.of(register, aim, by), words, words.say("machine.act"), this::keep);
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
        Event.MachineKnown known = new Event.MachineKnown(
                machine.name(),
                register.valueProperty().get().orElseThrow(),
                aim.valueProperty().get().orElseThrow());
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
