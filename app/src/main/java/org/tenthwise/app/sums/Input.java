package org.tenthwise.app.sums;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;

/**
 * One thing a sum takes: its key, what it is of, and how it is read. Reading, the guide and the fields of a form all go
 * by it.
 *
 * @param several whether it is a list
 * @param needed whether there is no answer without it, whatever else is given
 * @param bound what it must be beyond its type, as the guide says it; may be empty
 * @param usual what counts where it is left out, as the guide says it; may be empty
 * @param choices what each word it takes stands for; empty where it takes anything else
 * @param reader makes the value of what stands under the key, or refuses it
 */
public record Input<T>(
        String key,
        Quantity quantity,
        boolean several,
        boolean needed,
        String bound,
        String usual,
        Map<String, T> choices,
        Reader<T> reader) {

    /** Reads what is given under a key. */
    @FunctionalInterface
    public interface Reader<T> {
        T read(SumInput given, Input<T> as);
    }

    public Input {
        choices = Collections.unmodifiableMap(new LinkedHashMap<>(choices));
    }

    private static <T> Input<T> of(String key, Quantity quantity, boolean several, String bound, Reader<T> reader) {
        return new Input<>(key, quantity, several, true, bound, "", Map.of(), reader);
    }

    public static Input<Length> length(String key) {
        return of(
                key,
                Quantity.LENGTH,
                false,
                "",
                (given, as) -> Length.of(InputReading.figure(given, as), given.inUnit()));
    }

    public static Input<Length> positiveLength(String key) {
        return of(
                key,
                Quantity.LENGTH,
                false,
                "> 0",
                (given, as) -> Length.of(InputReading.positive(given, as), given.inUnit()));
    }

    public static Input<Length> lengthNotNegative(String key) {
        return of(
                key,
                Quantity.LENGTH,
                false,
                "≥ 0",
                (given, as) -> Length.of(InputReading.notNegative(given, as), given.inUnit()));
    }

    /** One or more. */
    public static Input<List<Length>> lengths(String key) {
        return of(key, Quantity.LENGTH, true, "", InputReading::lengths);
    }

    public static Input<BigDecimal> figure(String key) {
        return of(key, Quantity.FIGURE, false, "", InputReading::figure);
    }

    public static Input<BigDecimal> positive(String key) {
        return of(key, Quantity.FIGURE, false, "> 0", InputReading::positive);
    }

    public static Input<BigDecimal> notNegative(String key) {
        return of(key, Quantity.FIGURE, false, "≥ 0", InputReading::notNegative);
    }

    /** One or more. */
    public static Input<List<BigDecimal>> figures(String key) {
        return of(key, Quantity.FIGURE, true, "", InputReading::figures);
    }

    /** {@code least} and {@code most} included. */
    public static Input<Integer> whole(String key, int least, int most) {
        return of(
                key,
                Quantity.COUNT,
                false,
                "%d to %,d".formatted(least, most),
                (given, as) -> InputReading.whole(given, as, least, most));
    }

    /** A name or a designation, not blank. */
    public static Input<String> name(String key) {
        return of(key, Quantity.WORD, false, "", SumInput::text);
    }

    /** One of the words of {@code choices}. */
    public static <T> Input<T> choice(String key, Map<String, T> choices) {
        return new Input<>(key, Quantity.WORD, false, true, "", "", choices, InputReading::choice);
    }

    /** One of two words. */
    public static <T> Input<T> choice(String key, String one, T first, String other, T second) {
        Map<String, T> choices = new LinkedHashMap<>();
        choices.put(one, first);
        choices.put(other, second);
        return choice(key, choices);
    }

    /** One of {@code choices}, each by its name in small letters with hyphens. */
    public static <E extends Enum<E>> Input<E> choice(String key, E[] choices) {
        Map<String, E> words = new LinkedHashMap<>();
        for (E choice : choices) {
            words.put(choice.name().toLowerCase(Locale.ROOT).replace('_', '-'), choice);
        }
        return choice(key, words);
    }

    /** Groups of groups of figures: part by part, person by person, repeat by repeat. */
    public static Input<List<List<List<BigDecimal>>>> groups(String key) {
        return of(
                key,
                Quantity.FIGURE,
                true,
                "part by part, in each person by person, in each repeat by repeat",
                InputReading::groups);
    }

    /** Tables, each with some of {@code inputs}. */
    public static Input<List<SumInput>> tables(String key, Input<?>... inputs) {
        Set<String> keys = Arrays.stream(inputs).map(Input::key).collect(Collectors.toCollection(TreeSet::new));
        return of(
                key,
                Quantity.TABLE,
                true,
                "each a table of " + Arrays.stream(inputs).map(Input::said).collect(Collectors.joining(", ")),
                (given, as) -> InputReading.tables(given, as, keys));
    }

    /** The same, but of something else. */
    public Input<T> in(Quantity other) {
        return new Input<>(key, other, several, needed, bound, usual, choices, reader);
    }

    /** The same, but may be left out. */
    public Input<T> optional() {
        return new Input<>(key, quantity, several, false, bound, usual, choices, reader);
    }

    /** The same, but may be left out, and then {@code usual} counts. */
    public Input<T> usually(String what) {
        return new Input<>(key, quantity, several, false, bound, what, choices, reader);
    }

    /** The same, with what it must be in the words of the guide. */
    public Input<T> bounded(String words) {
        return new Input<>(key, quantity, several, needed, words, usual, choices, reader);
    }

    /** The same, refused as {@code why} says where it is not {@code right}. */
    public Input<T> that(Predicate<T> right, String bounded, String why) {
        return new Input<>(key, quantity, several, needed, bounded, usual, choices, (given, as) -> {
            T value = reader.read(given, as);
            if (!right.test(value)) {
                throw new CannotAnswer(as, "%s is %s: %s".formatted(as, given.text(as), why));
            }
            return value;
        });
    }

    /** What {@code made} makes of it; what that refuses is a refusal of this. */
    public <R> Input<R> as(Function<T, R> made) {
        return new Input<>(key, quantity, several, needed, bound, usual, Map.of(), (given, as) -> {
            T value = reader.read(given, this);
            return given.about(as, () -> made.apply(value));
        });
    }

    /** As the guide has it: what may be left out with a question mark, what it takes or what counts in brackets. */
    public String said() {
        String words = choices.keySet().stream().map(word -> "`" + word + "`").collect(Collectors.joining(", "));
        String more = Stream.of(words, bound, usual.isEmpty() ? "" : "else " + usual)
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining("; "));
        return "`" + key + "`" + (needed ? "" : "?") + (more.isEmpty() ? "" : " (" + more + ")");
    }

    /** Its key, as it stands in a sentence. */
    @Override
    public String toString() {
        return key;
    }
}
