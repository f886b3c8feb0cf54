package org.tenthwise.app.history;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Word;

/**
 * What is looked for in a history, each by its text: a day as ISO 8601 writes it, a verdict and the kind of a run by
 * their {@link Word}. What is not named makes no difference. Capitals tell no two apart but in part numbers and marks
 * of gauges.
 */
public record Sought(Map<SoughtBy, String> by) {

    /** Everything. */
    public static final Sought ALL = new Sought(Map.of());

    private static final Set<SoughtBy> OF_EVERY_PART =
            EnumSet.of(SoughtBy.PART_NUMBER, SoughtBy.DESIGNATOR, SoughtBy.BALLOON, SoughtBy.CHARACTERISTIC);

    /** @throws IllegalArgumentException where no day, verdict or kind of run is written so */
    public Sought {
        Map<SoughtBy, String> ordered = new EnumMap<>(SoughtBy.class);
        ordered.putAll(by);
        by = Collections.unmodifiableMap(ordered);
        by.forEach(Sought::value);
    }

    /** Everything of a part number. */
    public static Sought ofPart(String part) {
        return new Sought(Map.of(SoughtBy.PART_NUMBER, part));
    }

    /** @param text empty for whatever */
    public Sought with(SoughtBy what, String text) {
        Map<SoughtBy, String> other = new EnumMap<>(SoughtBy.class);
        other.putAll(by);
        if (text.isBlank()) {
            other.remove(what);
        } else {
            other.put(what, text.strip());
        }
        return new Sought(other);
    }

    public Sought without(SoughtBy what) {
        return with(what, "");
    }

    public Optional<String> of(SoughtBy what) {
        return Optional.ofNullable(by.get(what));
    }

    /** What a text stands for: a day, a verdict, the kind of a run, or itself. */
    public static Object value(SoughtBy what, String text) {
        return switch (what) {
            case FROM, TO -> day(text);
            case VERDICT -> choice(VerdictKind.class, text);
            case KIND -> choice(Purpose.class, text);
            case PART_NUMBER, SERIAL, LOT, PERSON, MACHINE, GAUGE, DESIGNATOR, BALLOON, CHARACTERISTIC -> text;
        };
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException("No day: " + text, e);
        }
    }

    private static <E extends Enum<E>> E choice(Class<E> choices, String word) {
        return Word.find(choices, word)
                .orElseThrow(() -> new IllegalArgumentException("No " + choices.getSimpleName() + ": " + word));
    }

    /**
     * Whether every part that was made is among what is found: nothing but part number and characteristic narrows it.
     */
    public boolean isWhole() {
        return by.containsKey(SoughtBy.PART_NUMBER) && OF_EVERY_PART.containsAll(by.keySet());
    }

    /** Whether parts are picked by what they came to: those show nothing of the others. */
    public boolean picksByResult() {
        return by.containsKey(SoughtBy.VERDICT);
    }
}
