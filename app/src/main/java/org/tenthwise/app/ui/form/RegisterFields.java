package org.tenthwise.app.ui.form;

import java.util.List;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.words.Words;

/**
 * What is asked of a machine before a cut is worked out.
 *
 * @param register how its register counts
 * @param aim what is usually aimed at on it
 */
public record RegisterFields(Field<Register> register, Field<Aim.ByLimits> aim) {

    public static RegisterFields of(Words words) {
        Field<Register> register = Field.choice(
                "register",
                words.say("machine.register"),
                words.say("machine.register.question"),
                counts -> words.say("run.register.counts", counts));
        Field<Aim.ByLimits> aim = Field.choice(
                "aim",
                words.say("machine.aim"),
                words.say("machine.aim.question"),
                usual -> words.say("machine.aim", usual));
        register.offer(List.of(Register.values()));
        aim.offer(List.of(Aim.ByLimits.values()));
        return new RegisterFields(register, aim);
    }

    /** How the register counts; both fields are filled in. */
    public Register counts() {
        return register.valueProperty().get().orElseThrow();
    }

    /** What is usually aimed at; both fields are filled in. */
    public Aim.ByLimits usual() {
        return aim.valueProperty().get().orElseThrow();
    }
}
