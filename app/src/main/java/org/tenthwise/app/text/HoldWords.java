package org.tenthwise.app.text;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.tenthwise.model.record.HoldOpened;
import org.tenthwise.model.record.Settled;
import org.tenthwise.model.words.Words;

/** What a hold point waits for; how it was opened: when, by whom, and what of it did not pass. */
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
        return others.isEmpty() ? opened : words.say("hold.opened.besides", opened, checks(others));
    }

    /** Numbers of checks, more than two in a row by the first and the last: "4", "4, 5", "2–5, 7". */
    public String checks(List<Integer> numbers) {
        List<String> rows = new ArrayList<>();
        for (int from = 0; from < numbers.size(); ) {
            int to = from;
            while (to + 1 < numbers.size() && numbers.get(to + 1) == numbers.get(to) + 1) {
                to++;
            }
            rows.add(String.valueOf(numbers.get(from)));
            if (to == from + 1) {
                rows.add(String.valueOf(numbers.get(to)));
            } else if (to > from) {
                rows.set(rows.size() - 1, words.say("hold.in-a-row", numbers.get(from), numbers.get(to)));
            }
            from = to + 1;
        }
        return words.list(rows);
    }
}
