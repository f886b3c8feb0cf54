package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Optional;

/** What a plan can say under {@code temperature} of a step. */
enum TemperatureAsked {

    ASK("ask"), NOT_ASKED("not-asked");

    private final String word;

    TemperatureAsked(String word) {
        this.word = word;
    }

    /** Whether temperatures are asked for at a step of a kind that heat touches. */
    static boolean read(Keys keys, boolean plannedFor) {
        Optional<TemperatureAsked> written = keys.ifAny(ClimateRules.KEY, key -> keys.word(key, List.of(values()), asked -> asked.word));
        if (keys.has(ClimateRules.KEY) && !plannedFor) {
            keys.problem(ClimateRules.KEY, "\"temperature\" means nothing without a [temperature] table in the plan");
        }
        return plannedFor && written.orElse(ASK) == ASK;
    }
}
