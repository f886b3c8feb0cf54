package org.tenthwise.app.text;

import java.time.OffsetDateTime;
import java.util.List;
import org.tenthwise.model.record.HoldOpened;
import org.tenthwise.model.record.Settled;
import org.tenthwise.model.words.Words;

/** How a hold point was opened: when, by whom, and what of it did not pass. */
public final class HoldWords {

    private final Words words;

    public HoldWords(Words words) {
        this.words = words;
    }

    /** In a line: what opened it, and the other checks that somebody signed for. */
    public String opened(HoldOpened hold, OffsetDateTime now) {
        Settled last = hold.last();
        String opened = words.say(
                words.key("hold.opened", last.how()),
                new Dates(words).lately(last.by().at(), now),
                last.person());
        List<Integer> others = hold.signedFor().stream()
                .filter(step -> !step.equals(last))
                .map(step -> step.line().step().number())
                .toList();
        return others.isEmpty() ? opened : words.say("hold.opened.besides", opened, others);
    }
}
