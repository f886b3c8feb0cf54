package org.tenthwise.app.text;

import org.tenthwise.app.series.MeasureAgain;
import org.tenthwise.model.words.Words;

/**
 * Counsel to measure again, as a shop says it: counted in parts from the last one that was read, never by a number of
 * one.
 */
public final class MeasureAgainWords {

    private final Words words;

    public MeasureAgainWords(Words words) {
        this.words = words;
    }

    public String say(MeasureAgain again) {
        return words.say(
                words.key("history.again", again.counsel()),
                again.parts(),
                part(again.last().run().serial()),
                new Dates(words).dayAndHour(again.last().at()));
    }

    private String part(String serial) {
        return serial.isBlank() ? words.say("history.again.last") : words.say("history.again.serial", serial);
    }

    /** The same at a line of a picture. */
    public String atTheLine(MeasureAgain again) {
        return words.say("history.again.flag", again.parts());
    }
}
