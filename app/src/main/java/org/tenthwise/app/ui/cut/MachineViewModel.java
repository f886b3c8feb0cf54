package org.tenthwise.app.ui.cut;

import java.util.List;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.words.Words;

/** How the register of the machine counts, and what is usually aimed at on it; what stands so far is chosen already. */
public final class MachineViewModel {

    private final Field<Register> register;
    private final Field<Aim.ByLimits> aim;
    private final StepForm step;

    public MachineViewModel(CurrentRun inHand, Words words, Navigator journey) {
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
        register.offer(List.of(Register.values()));
        aim.offer(List.of(Aim.ByLimits.values()));
        FormViewModel form = new FormViewModel(List.of(register, aim), words, words.say("machine.act"), this::keep);
        step = new StepForm(
                words.say("machine.title"),
                form,
                inHand,
                inHand.card(words, state -> List.of(words.say("machine.stays"))),
                this::offer,
                journey);
    }

    public StepForm step() {
        return step;
    }

    private void offer(State state, Suggestions known) {
        step.form().aboutProperty().set(state.sheet().run().begun().machine());
        state.sheet().run().register().ifPresent(register.choice()::choose);
        aim.choice().choose(state.sheet().run().usualAim().orElse(Aim.ByLimits.MIDDLE));
    }

    private void keep() {
        Register counts = register.valueProperty().get().orElseThrow();
        Aim.ByLimits usual = aim.valueProperty().get().orElseThrow();
        step.ask(session -> session.machine(counts, usual));
    }
}
