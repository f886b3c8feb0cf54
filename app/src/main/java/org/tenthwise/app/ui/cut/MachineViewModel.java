package org.tenthwise.app.ui.cut;

import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.InHand;
import org.tenthwise.app.ui.form.StepCard;
import org.tenthwise.app.ui.shell.Journey;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;

/** How the register of the machine counts, and what is usually aimed at on it; what stands so far is chosen already. */
public final class MachineViewModel {

    private final InHand inHand;
    private final Words words;
    private final Journey journey;
    private final Field<Register> register;
    private final Field<Aim> aim;
    private final FormViewModel form;

    public MachineViewModel(InHand inHand, Words words, Journey journey) {
        this.inHand = inHand;
        this.words = words;
        this.journey = journey;
        register = Field.choice("register", words.say("machine.register"), words.say("machine.register.question"),
                counts -> words.say("run.register.counts", counts));
        aim = Field.choice("aim", words.say("machine.aim"), words.say("machine.aim.question"),
                usual -> words.say(usual instanceof Aim.Third ? "machine.aim.third" : "machine.aim.middle"));
        register.offer(List.of(Register.values()));
        aim.offer(List.of(new Aim.Middle(), new Aim.Third()));
        form = new FormViewModel(List.of(register, aim), words, words.say("machine.act"), this::keep);
    }

    public FormViewModel form() {
        return form;
    }

    public InHand inHand() {
        return inHand;
    }

    public ObservableValue<Optional<StepCard>> cardValue() {
        return inHand.stateProperty().map(state -> state.map(there -> StepCard.of(there, words, List.of(words.say("machine.stays")))));
    }

    public void load() {
        inHand.load((state, known) -> offer(state));
    }

    private void offer(State state) {
        form.aboutProperty().set(state.sheet().run().begun().machine());
        state.sheet().run().register().ifPresent(register.choice()::choose);
        aim.choice().choose(state.sheet().run().usualAim().orElseGet(Aim.Middle::new));
    }

    private void keep() {
        Register counts = register.valueProperty().get().orElseThrow();
        Aim usual = aim.valueProperty().get().orElseThrow();
        form.busy(true);
        inHand.errands().ask(() -> inHand.session().machine(counts, usual), state -> journey.back(), () -> form.busy(false));
    }
}
