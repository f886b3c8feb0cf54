package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.Event;

/** What a readings file says of its machine: how the register counts, and the aim that is usual there. */
final class SampleMachine {

    private static final String REGISTER = "register";
    private static final String USUAL_AIM = "usual_aim";

    private SampleMachine() {
    }

    static Optional<Event> read(Keys keys, Optional<String> machine) {
        Optional<Register> register = keys.ifAny(REGISTER, key -> keys.word(key, List.of(Register.values()), SamplePass::word));
        Optional<String> usual = keys.ifAny(USUAL_AIM, key -> keys.word(key, List.of("middle", "third"), word -> word));
        if (keys.has(USUAL_AIM) && !keys.has(REGISTER)) {
            keys.problem(USUAL_AIM, "\"%s\" of a machine stands beside its \"%s\", which is missing".formatted(USUAL_AIM, REGISTER));
        }
        Aim aim = usual.filter("third"::equals).<Aim>map(word -> new Aim.Third()).orElseGet(Aim.Middle::new);
        return machine.flatMap(name -> register.map(counts -> new Event.MachineKnown(name, counts, aim)));
    }
}
