package org.tenthwise.app.text;

import org.tenthwise.model.plan.CheckOfDimension;

/** The modifier of a size, as the drawing has it. */
public final class ModifierWords {

    private ModifierWords() {}

    /** Its letters, to stand behind other words; empty where there is none. */
    public static String behind(CheckOfDimension check) {
        return check.drawingSays().map(modifier -> " (" + modifier.name() + ")").orElse("");
    }
}
