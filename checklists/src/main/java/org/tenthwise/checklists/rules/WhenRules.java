package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tenthwise.checklists.format.RawList;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.model.plan.WhenAsked;
import org.tenthwise.model.words.Message;

/** {@code when = ["first", "every 5", "last"]}: for which pieces of a lot a step is asked. */
final class WhenRules {

    static final String KEY = "when";

    private static final String FIRST = "first";
    private static final String LAST = "last";
    private static final Pattern EVERY = Pattern.compile("every ([1-9]\\d{0,5})");

    private WhenRules() {}

    /** Absent where a problem was noted. */
    static Optional<WhenAsked> read(TableKeys keys) {
        boolean first = false;
        boolean last = false;
        Optional<Integer> every = Optional.empty();
        int before = keys.problemCount();
        List<RawValue> items = keys.list(KEY).map(RawList::items).orElse(List.of());
        for (RawValue item : items) {
            String word = item instanceof RawValue.Text text ? text.text().strip() : "";
            Matcher counted = EVERY.matcher(word);
            boolean twice =
                    word.equals(FIRST) && first || word.equals(LAST) && last || counted.matches() && every.isPresent();
            if (twice) {
                keys.problem(item.spot(), "plan.when.twice", word);
            } else if (word.equals(FIRST)) {
                first = true;
            } else if (word.equals(LAST)) {
                last = true;
            } else if (counted.matches()) {
                every = Optional.of(Integer.valueOf(counted.group(1)));
            } else {
                keys.problem(
                        item.spot(), "plan.when.word", word.isEmpty() ? item.what() : Message.of("plan.quoted", word));
            }
        }
        return keys.problemCount() == before ? Optional.of(new WhenAsked(first, every, last)) : Optional.empty();
    }
}
