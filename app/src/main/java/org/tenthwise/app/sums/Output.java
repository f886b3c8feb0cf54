package org.tenthwise.app.sums;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Keyed;
import org.tenthwise.model.words.Message;

/**
 * One thing a sum comes to: its key, what it is of, and how it is written down.
 *
 * @param always whether every answer has it
 * @param signed whether its sign says something, so that a person is shown a plus as well
 * @param words those it may be; empty where it is anything else
 * @param writer writes a value down
 */
public record Output<T>(
        String key, Quantity quantity, boolean always, boolean signed, List<String> words, Writer<T> writer)
        implements Keyed {

    /** Writes a value down, lengths in a unit. */
    @FunctionalInterface
    public interface Writer<T> {
        SumValue write(T value, Unit unit);
    }

    /** Where no standard sets the places: a nanometre, and a hundredth of a millionth of an inch. */
    private static final int PLACES_OF_A_MILLIMETRE = 6;

    private static final int PLACES_OF_AN_INCH = 8;
    private static final int LEAST_PLACES = 8;
    private static final MathContext FIGURES = new MathContext(12, RoundingMode.HALF_EVEN);
    /** Leaves eight figures of a chance of 1e-32; what is less is zero in any shop. */
    private static final int MOST_PLACES = 40;

    private static <T> Output<T> of(String key, Quantity quantity, Writer<T> writer) {
        return new Output<>(key, quantity, true, false, List.of(), writer);
    }

    /** A length to 1e-6 mm or 1e-8 in, half-even. */
    public static Output<Length> length(String key) {
        return of(key, Quantity.LENGTH, Output::plain);
    }

    /** Lengths in their order, each to 1e-6 mm or 1e-8 in. */
    public static Output<List<Length>> lengths(String key) {
        return of(
                key,
                Quantity.LENGTH,
                (lengths, unit) -> new SumValue.Many(
                        lengths.stream().map(length -> plain(length, unit)).toList()));
    }

    /** A decimal just as it is. */
    public static Output<BigDecimal> exact(String key) {
        return of(key, Quantity.FIGURE, (figure, unit) -> new SumValue.Text(figure.toPlainString()));
    }

    /** All figures an exact sum has, to eight places or more. */
    public static Output<BigDecimal> full(String key) {
        return of(
                key,
                Quantity.FIGURE,
                (figure, unit) -> new SumValue.Text(
                        figure.setScale(Math.max(LEAST_PLACES, figure.scale()), RoundingMode.UNNECESSARY)
                                .toPlainString()));
    }

    /** A whole number. */
    public static Output<Integer> whole(String key) {
        return of(key, Quantity.COUNT, (figure, unit) -> new SumValue.Text(figure.toString()));
    }

    /** A number from a sum with roots, to twelve figures, and to forty places at most. */
    public static Output<Double> figure(String key) {
        return of(key, Quantity.FIGURE, (figure, unit) -> {
            BigDecimal rounded = new BigDecimal(figure).round(FIGURES);
            int places = Math.min(MOST_PLACES, Math.max(rounded.scale(), LEAST_PLACES));
            return new SumValue.Text(
                    rounded.setScale(places, RoundingMode.HALF_EVEN).toPlainString());
        });
    }

    /** One of {@code words}; any where there are none. */
    public static Output<String> word(String key, String... words) {
        return new Output<>(key, Quantity.WORD, true, false, List.of(words), (word, unit) -> new SumValue.Text(word));
    }

    /** One of {@code words}, each by its name in small letters with hyphens. */
    public static <E extends Enum<E>> Output<E> word(String key, E[] words) {
        return new Output<>(
                key,
                Quantity.WORD,
                true,
                false,
                Stream.of(words).map(Output::named).toList(),
                (word, unit) -> new SumValue.Text(named(word)));
    }

    /** Tables, each with {@code outputs}. */
    public static Output<List<OutputValues>> tables(String key, Output<?>... outputs) {
        return new Output<>(
                key,
                Quantity.TABLE,
                true,
                false,
                Stream.of(outputs).map(Output::key).toList(),
                (tables, unit) -> new SumValue.Many(tables.stream()
                        .<SumValue>map(table -> table.written(unit))
                        .toList()));
    }

    private static String named(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static SumValue plain(Length length, Unit unit) {
        int places = unit == Unit.INCH ? PLACES_OF_AN_INCH : PLACES_OF_A_MILLIMETRE;
        return new SumValue.Text(
                length.in(unit).setScale(places, RoundingMode.HALF_EVEN).toPlainString());
    }

    /** A length to {@code places}, as a standard prints it. */
    public static Output<Length> to(int places, Output<Length> length) {
        return new Output<>(
                length.key,
                length.quantity,
                length.always,
                length.signed,
                length.words,
                (value, unit) -> new SumValue.Text(
                        value.in(unit).setScale(places, RoundingMode.HALF_EVEN).toPlainString()));
    }

    /** The same, but of something else. */
    public Output<T> in(Quantity other) {
        return new Output<>(key, other, always, signed, words, writer);
    }

    /** The same, but absent from some answers. */
    public Output<T> sometimes() {
        return new Output<>(key, quantity, false, signed, words, writer);
    }

    /** The same, but with a sign that says something. */
    public Output<T> withSign() {
        return new Output<>(key, quantity, always, true, words, writer);
    }

    /** As the guide has it: with a question mark where it may be absent, and the words it may be in brackets. */
    Message said() {
        String of = "`" + key + "`" + (always ? "" : "?");
        List<String> each = words.stream().map(word -> "`" + word + "`").toList();
        return each.isEmpty()
                ? Message.of("as-said", of)
                : Message.of(quantity == Quantity.TABLE ? "found.each" : "guide.with", of, each);
    }

    /** Its key, as it stands in a sentence. */
    @Override
    public String toString() {
        return key;
    }
}
