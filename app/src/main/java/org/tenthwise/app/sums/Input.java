package org.tenthwise.app.sums;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Keyed;
import org.tenthwise.model.words.Message;

/**
 * One thing a sum takes: its key, what it is of, and how it is read. Reading, the guide and the fields of a form all go
 * by it.
 *
 * @param several whether it is a list
 * @param needed whether there is no answer without it, whatever else is given
 * @param bound what it must be beyond its type, as the guide says it; may be absent
 * @param usual what counts where it is left out, as the guide says it; may be absent
 * @param choices what each word it takes stands for; empty where it takes anything else
 * @param reader makes the value of what stands under the key, or refuses it
 */
public record Input<T>(
        String key,
        Quantity quantity,
        boolean several,
        boolean needed,
        Optional<Message> bound,
        Optional<Message> usual,
        Map<String, T> choices,
        Reader<T> reader)
        implements Keyed {

    /** Reads what is given under a key. */
    @FunctionalInterface
    public interface Reader<T> {
        T read(SumInput given, Input<T> as);
    }

    private static final Message POSITIVE = Message.of("as-said", "> 0");
    private static final Message NOT_NEGATIVE = Message.of("as-said", "≥ 0");

    public Input {
        choices = Collections.unmodifiableMap(new LinkedHashMap<>(choices));
    }

    private static <T> Input<T> of(String key, Quantity quantity, boolean several, Reader<T> reader) {
        return new Input<>(key, quantity, several, true, Optional.empty(), Optional.empty(), Map.of(), reader);
    }

    public static Input<Length> length(String key) {
        return of(key, Quantity.LENGTH, false, InputReading::length);
    }

    public static Input<Length> positiveLength(String key) {
        return Input.<Length>of(key, Quantity.LENGTH, false, InputReading::positiveLength)
                .bounded(POSITIVE);
    }

    public static Input<Length> lengthNotNegative(String key) {
        return Input.<Length>of(key, Quantity.LENGTH, false, InputReading::lengthNotNegative)
                .bounded(NOT_NEGATIVE);
    }

    /** One or more. */
    public static Input<List<Length>> lengths(String key) {
        return of(key, Quantity.LENGTH, true, InputReading::lengths);
    }

    /** One or more; one may stand without a list. */
    public static Input<List<Length>> lengthOrLengths(String key) {
        return Input.<List<Length>>of(key, Quantity.LENGTH, true, InputReading::lengthOrLengths)
                .bounded(Message.of("guide.one-or-several"));
    }

    public static Input<BigDecimal> figure(String key) {
        return of(key, Quantity.FIGURE, false, InputReading::figure);
    }

    public static Input<BigDecimal> positive(String key) {
        return of(key, Quantity.FIGURE, false, InputReading::positive).bounded(POSITIVE);
    }

    public static Input<BigDecimal> notNegative(String key) {
        return of(key, Quantity.FIGURE, false, InputReading::notNegative).bounded(NOT_NEGATIVE);
    }

    /** One or more. */
    public static Input<List<BigDecimal>> figures(String key) {
        return of(key, Quantity.FIGURE, true, InputReading::figures);
    }

    /** {@code least} and {@code most} included. */
    public static Input<Integer> whole(String key, int least, int most) {
        return Input.<Integer>of(key, Quantity.COUNT, false, (given, as) -> InputReading.whole(given, as, least, most))
                .bounded(Message.of("guide.whole", least, String.format(Locale.ROOT, "%,d", most)));
    }

    /** A name or a designation, not blank. */
    public static Input<String> name(String key) {
        return of(key, Quantity.WORD, false, SumInput::text);
    }

    /** One of the words of {@code choices}. */
    public static <T> Input<T> choice(String key, Map<String, T> choices) {
        return new Input<>(
                key, Quantity.WORD, false, true, Optional.empty(), Optional.empty(), choices, InputReading::choice);
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
        return of(key, Quantity.FIGURE, true, InputReading::groups).bounded(Message.of("guide.groups"));
    }

    /** A figure or a list of them under each of any names, in the unit of all others. */
    public static Input<Map<String, List<BigDecimal>>> byName(String key) {
        return of(key, Quantity.TABLE, false, InputReading::byName);
    }

    /** Tables, each with some of {@code inputs}. */
    public static Input<List<SumInput>> tables(String key, Input<?>... inputs) {
        Set<String> keys = Arrays.stream(inputs).map(Input::key).collect(Collectors.toCollection(TreeSet::new));
        return Input.<List<SumInput>>of(key, Quantity.TABLE, true, (given, as) -> InputReading.tables(given, as, keys))
                .bounded(Message.of(
                        "guide.tables", Arrays.stream(inputs).map(Input::said).toList()));
    }

    /** The same, but of something else. */
    public Input<T> in(Quantity other) {
        return new Input<>(key, other, several, needed, bound, usual, choices, reader);
    }

    /** The same, but may be left out. */
    public Input<T> optional() {
        return new Input<>(key, quantity, several, false, bound, usual, choices, reader);
    }

    /** The same, but may be left out, and then {@code what} counts: a figure, or a word between backticks. */
    public Input<T> usually(String what) {
        return usually(Message.of("as-said", what));
    }

    /** The same, but may be left out, and then what its words {@code usual} say counts. */
    public Input<T> usually() {
        return usually(said("usual"));
    }

    private Input<T> usually(Message what) {
        return new Input<>(key, quantity, several, false, bound, Optional.of(what), choices, reader);
    }

    /** The same, and what it must be is in its words {@code which}. */
    public Input<T> bounded(String which) {
        return bounded(said(which));
    }

    private Input<T> bounded(Message what) {
        return new Input<>(key, quantity, several, needed, Optional.of(what), usual, choices, reader);
    }

    /**
     * The same, refused where it is not {@code right}: its words {@code bound} say what is, {@code wrong} what is not.
     */
    public Input<T> that(Predicate<T> right) {
        return that(right, said("bound"), said("wrong"));
    }

    /** The same, refused as {@code wrong} says where it is not {@code right}. */
    public Input<T> that(Predicate<T> right, Message what, Message wrong) {
        Reader<T> asRight = (given, as) -> {
            T value = reader.read(given, as);
            if (!right.test(value)) {
                throw new CannotAnswer(as, Message.of("given.is", as, given.text(as), wrong));
            }
            return value;
        };
        return new Input<>(key, quantity, several, needed, Optional.of(what), usual, choices, asRight);
    }

    /** What {@code made} makes of it; what that refuses is a refusal of this. */
    public <R> Input<R> as(Function<T, R> made) {
        return new Input<>(key, quantity, several, needed, bound, usual, Map.of(), (given, as) -> {
            T value = reader.read(given, this);
            return given.about(as, () -> made.apply(value));
        });
    }

    /** As the guide has it: what may be left out with a question mark, what it takes or what counts in brackets. */
    Message said() {
        String of = "`" + key + "`" + (needed ? "" : "?");
        Optional<Message> words = Optional.of(choices.keySet())
                .filter(any -> !any.isEmpty())
                .map(any -> Message.of(
                        "as-said", any.stream().map(word -> "`" + word + "`").toList()));
        return Stream.of(words, bound, usual.map(what -> Message.of("guide.else", what)))
                .flatMap(Optional::stream)
                .reduce((one, next) -> Message.of("guide.and", one, next))
                .map(more -> Message.of("guide.with", of, more))
                .orElse(Message.of("as-said", of));
    }

    /** Its words of that name, their gaps filled in order. */
    Message said(String which, Object... values) {
        return Message.of("given." + key.replace('_', '-') + "." + which, values);
    }

    /** Its key, as it stands in a sentence. */
    @Override
    public String toString() {
        return key;
    }
}
