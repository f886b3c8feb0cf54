package org.tenthwise.app.text;

import java.util.Optional;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.words.Words;

/**
 * Where a reading was taken, and which of several at one place it is: of a sweep its highest or its lowest, of a
 * symmetry the one turned over.
 */
public record ReadingPlace(Words words) {

    /** @param repeat from 1 */
    public String of(Check check, String place, int repeat) {
        return ofSweep(check, place, repeat)
                .orElseGet(() -> repeat == 1 ? place : words.say("record.repeat", place, repeat));
    }

    /** The same, absent for what is no sweep and not turned over. */
    public Optional<String> ofSweep(Check check, String place, int repeat) {
        return check.asDimension()
                .flatMap(CheckOfDimension::asIndicated)
                .map(indicated -> indicated.of().isHighestFirst()
                        ? words.say(repeat == 1 ? "record.sweep.highest" : "record.sweep.lowest", place)
                        : repeat == 1 ? place : words.say("record.sweep.turned-over", place));
    }
}
