package org.tenthwise.model.thread;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;

/**
 * The tolerance class of a thread as a drawing writes it: {@code 2A}, {@code 6g}, {@code 5g6g}, {@code 2G}, {@code 7e}.
 *
 * @param pitchGrade grade of the pitch diameter; for inch threads the number of the class
 * @param letter letter of the class
 * @param crestGrade grade of the crest diameter, major of a screw, minor of a nut; its own for metric threads only
 */
public record ThreadClass(ThreadForm form, String text, int pitchGrade, char letter, int crestGrade) {

    /** Groups: grade of the pitch diameter, letter, and for metric threads the grade of the crest if it is written. */
    private static final Map<ThreadForm, List<Pattern>> PATTERNS = Map.of(
            ThreadForm.UNIFIED, patterns("([1-3])([AB])"),
            ThreadForm.METRIC, patterns("([3-9])([e-h])(?:([3-9])\\2)?", "([4-8])([GH])(?:([4-8])\\2)?"),
            ThreadForm.ACME, patterns("([2-4])(G)"),
            ThreadForm.STUB_ACME, patterns("([2-4])(G)"),
            ThreadForm.TRAPEZOIDAL, patterns("([78])(e)", "([89])(c)", "([7-9])(H)"));

    private static List<Pattern> patterns(String... each) {
        return Stream.of(each).map(Pattern::compile).toList();
    }

    /** @throws IllegalArgumentException if threads of that form have no such class */
    public static ThreadClass of(ThreadForm form, String text) {
        for (Pattern pattern : PATTERNS.get(form)) {
            Matcher matcher = pattern.matcher(text);
            if (matcher.matches()) {
                int grade = Integer.parseInt(matcher.group(1));
                Optional<String> crest = Optional.ofNullable(matcher.groupCount() > 2 ? matcher.group(3) : null);
                return new ThreadClass(
                        form,
                        text,
                        grade,
                        matcher.group(2).charAt(0),
                        crest.map(Integer::parseInt).orElse(grade));
            }
        }
        throw new Refused("model.thread-class.class", text, Message.ofValue("model.thread-class.known", form));
    }

    /** The side the class says; absent for Acme threads, where screw and nut have the same classes. */
    public Optional<ThreadSide> side() {
        return switch (form) {
            case ACME, STUB_ACME -> Optional.empty();
            case UNIFIED -> Optional.of(letter == 'A' ? ThreadSide.EXTERNAL : ThreadSide.INTERNAL);
            case METRIC, TRAPEZOIDAL ->
                Optional.of(Character.isLowerCase(letter) ? ThreadSide.EXTERNAL : ThreadSide.INTERNAL);
        };
    }

    @Override
    public String toString() {
        return text;
    }
}
