package org.tenthwise.app.text;

import org.tenthwise.app.session.Objection;
import org.tenthwise.model.words.Words;

/** Why something typed was not taken, as a sentence. */
public final class Objections {

    private final Words words;

    public Objections(Words words) {
        this.words = words;
    }

    public String say(Objection why) {
        return why.kind() == Objection.Kind.FAR_OFF
                ? words.say("refused.far-off", figure(why.detail()), figure(why.expected()))
                : words.say("refused", why.kind());
    }

    /** The same where it must be short, beside the figure itself. */
    public String inShort(Objection why) {
        return why.kind() == Objection.Kind.FAR_OFF
                ? words.say("run.objection.far-off", figure(why.expected()))
                : words.say("run.objection", why.kind());
    }

    private static String figure(String typed) {
        return typed.replace('-', '\u2212');
    }
}
