package org.tenthwise.app.firstarticle;

import org.tenthwise.model.words.Words;

/**
 * A field of one of the three forms.
 *
 * @param number it has in the edition; empty for a column beside the standard's
 * @param key of its name
 */
public record NumberedField(String number, String key) {

    /** Beside the fields of the standard. */
    static NumberedField own(String key) {
        return new NumberedField("", key);
    }

    /** Without its number. */
    public String name(Words words) {
        return words.say("report.field." + key);
    }

    /** Number and name: "9 Results". */
    public String head(Words words) {
        return number.isEmpty() ? name(words) : number + " " + name(words);
    }
}
