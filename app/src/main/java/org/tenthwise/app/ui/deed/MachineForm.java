package org.tenthwise.app.ui.deed;

import java.util.List;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.words.Words;

/** How the register of the machine counts, and what is usually aimed at on it; what stands so far is chosen already. */
public final class MachineForm extends StepForm {

    private final Field<Register> register;
    private final Field<Aim.ByLimits> aim;

    public MachineForm(CurrentRun inHand, Words words, Navigator navigator) {
        super(words.say("machine.title"), inHand, words, navigator);
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
        asks(words.say("machine.act"), register, aim);
    }

    @Override
    protected void offer(State state, Suggestions known) {
        form().aboutProperty().set(state.sheet().run().begun().machine());
        state.sheet().run().register().ifPresent(register.choice()::choose);
        aim.choice().choose(state.sheet().run().usualAim().orElse(Aim.ByLimits.MIDDLE));
    }

    @Override
    protected List<String> notes(State state) {
        return List.of(words.say("machine.stays"));
    }

    @Override
    protected void act() {
        Register counts = register.valueProperty().get().orElseThrow();
        Aim.ByLimits usual = aim.valueProperty().get().orElseThrow();
        ask(session -> session.machine(counts, usual));
    }
}
