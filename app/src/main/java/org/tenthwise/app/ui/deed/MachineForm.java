package org.tenthwise.app.ui.deed;

import java.util.List;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.RegisterFields;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.words.Words;

/** How the register of the machine counts, and what is usually aimed at on it; what stands so far is chosen already. */
public final class MachineForm extends StepForm {

    private final RegisterFields asked;

    public MachineForm(CurrentRun inHand, Words words, Navigator navigator) {
        super(words.say("machine.title"), inHand, words, navigator);
        asked = RegisterFields.of(words);
        asks(words.say("machine.act"), asked.register(), asked.aim());
    }

    @Override
    protected void offer(State state, Suggestions known) {
        form().aboutProperty().set(state.sheet().run().begun().machine());
        state.sheet().run().register().ifPresent(asked.register().choice()::choose);
        asked.aim().choice().choose(state.sheet().run().usualAim().orElse(Aim.ByLimits.MIDDLE));
    }

    @Override
    protected List<String> notes(State state) {
        return List.of(words.say("machine.stays"));
    }

    @Override
    protected void act() {
        ask(session -> session.machine(asked.counts(), asked.usual()));
    }
}
