package org.tenthwise.app.text;

import java.util.Optional;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.SizeModifier;

/** The modifier of a size, as the drawing has it. */
public final class Modifier {

    private Modifier() {
    }

    /** Absent where the drawing has none, and for what is no size. */
    public static Optional<SizeModifier> of(Check check) {
        return check instanceof Check.Size size ? size.drawingSays() : check instanceof Check.OverWires wires ? wires.drawingSays() : Optional.empty();
    }

    /** Its letters, to stand behind other words; empty where there is none. */
    public static String behind(Check check) {
        return of(check).map(modifier -> " (" + modifier.name() + ")").orElse("");
    }
}
