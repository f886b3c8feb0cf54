package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.words.Word;

/** What a readings file says of its machine: how the register counts, and the aim that is usual there. */
final class SampleMachine {

    private static final String REGISTER = "register";
    private static final String USUAL_AIM = "usual_aim";

    private SampleMachine() {}

    /** An aim that the file does not say is not meant: the usual one of the machine stays what it is. */
    static void read(TableKeys keys, Optional<String> machine, SampleEvents events) {
        Optional<Register> register = keys.ifAny(REGISTER, key -> keys.word(key, List.of(Register.values()), Word::of));
        Optional<Aim.ByLimits> usual =
                keys.ifAny(USUAL_AIM, key -> keys.word(key, List.of(Aim.ByLimits.values()), Aim.ByLimits::key));
        if (keys.has(USUAL_AIM) && !keys.has(REGISTER)) {
            keys.problem(USUAL_AIM, "readings.usual-aim");
        }
        if (machine.isPresent() && register.isPresent()) {
            events.add(new ShopEvent.MachineKnown(machine.get(), register.get(), usual.orElse(Aim.ByLimits.MIDDLE)));
            if (usual.isPresent()) {
                events.lastIsMeant();
            }
        }
    }
}
