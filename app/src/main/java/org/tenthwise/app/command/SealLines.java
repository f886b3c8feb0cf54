package org.tenthwise.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.tenthwise.app.key.PublicKeyOfStation;
import org.tenthwise.app.key.Trusted;
import org.tenthwise.app.store.Seals;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Words;

/**
 * What is said of the seals of stations, in lines, and whether that is enough.
 *
 * @param enough whether all that is closed is sealed by keys that are trusted; always so where no key was named
 */
record SealLines(List<String> lines, boolean enough) {

    private static final int MOST_NAMED = 10;

    /**
     * Of what nothing else signs: all that is closed must be sealed then.
     *
     * @param hasOthers whether there are runs besides that other stations signed for
     */
    static SealLines of(Seals seals, boolean hasOthers, Trusted trusted, Words words) {
        List<String> lines = new ArrayList<>(told(seals, words));
        if (trusted.isNobody()) {
            if (!seals.runs().isEmpty()) {
                lines.add(words.say("command.verify.whose-seal"));
            }
            return new SealLines(lines, true);
        }
        List<String> others = notTrusted(seals, trusted, words);
        lines.addAll(others);
        boolean nothing = seals.runs().isEmpty() && seals.unsigned().isEmpty();
        if (nothing && !hasOthers) {
            lines.add(words.say("command.verify.nothing-sealed"));
        }
        boolean enough = others.isEmpty()
                && seals.unsigned().isEmpty()
                && (hasOthers || !seals.runs().isEmpty());
        if (enough && !nothing) {
            lines.add(words.say("command.verify.trusted"));
        }
        return new SealLines(lines, enough);
    }

    /** Within what is signed as a whole: what is not sealed there is signed with it. */
    static SealLines within(Seals seals, Trusted trusted, Words words) {
        List<String> others = trusted.isNobody() ? List.of() : notTrusted(seals, trusted, words);
        return new SealLines(
                Stream.concat(told(seals, words).stream(), others.stream()).toList(), others.isEmpty());
    }

    private static List<String> told(Seals seals, Words words) {
        List<String> lines = new ArrayList<>();
        for (Map.Entry<String, List<String>> by : seals.runs().entrySet()) {
            lines.add(words.say(Message.of("command.verify.sealed")
                    .with("n", by.getValue().size())
                    .with("key", PublicKeyOfStation.shortened(by.getKey()))
                    .with("whole", by.getKey())));
        }
        if (!seals.unsigned().isEmpty()) {
            int named = Math.min(MOST_NAMED, seals.unsigned().size());
            lines.add(words.say(Message.of("command.verify.unsealed")
                    .with("n", seals.unsigned().size())
                    .with("runs", seals.unsigned().subList(0, named))
                    .with("more", seals.unsigned().size() - named)));
        }
        return lines;
    }

    private static List<String> notTrusted(Seals seals, Trusted trusted, Words words) {
        return seals.keys().stream()
                .filter(key -> !trusted.holds(key))
                .map(key -> words.say("command.verify.not-trusted", key))
                .toList();
    }
}
