package org.tenthwise.app.sums;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Message;

/** Makes figures, words, lists and tables of what was typed, or refuses it with its key and, in a list, its place. */
final class InputReading {

    private InputReading() {}

    static BigDecimal figure(SumInput given, Input<?> input) {
        BigDecimal figure = figure(input, () -> place(input), given.value(input));
        return ownUnit(given.value(input))
                .map(unit -> Length.of(figure, unit).in(given.inUnit()))
                .orElse(figure);
    }

    private static Optional<Unit> ownUnit(SumValue value) {
        return value instanceof SumValue.Text typed ? typed.unit() : Optional.empty();
    }

    private static Length length(SumInput given, SumValue value, BigDecimal figure) {
        return Length.of(figure, ownUnit(value).orElseGet(given::inUnit));
    }

    /** Exactly as it was typed, whichever unit that was. */
    static Length length(SumInput given, Input<?> input) {
        SumValue value = given.value(input);
        return length(given, value, figure(input, () -> place(input), value));
    }

    static Length positiveLength(SumInput given, Input<?> input) {
        positive(given, input);
        return length(given, input);
    }

    static Length lengthNotNegative(SumInput given, Input<?> input) {
        notNegative(given, input);
        return length(given, input);
    }

    static Written written(SumInput given, Input<?> input) {
        SumValue value = given.value(input);
        return Written.of(
                figure(input, () -> place(input), value), ownUnit(value).orElseGet(given::inUnit));
    }

    static BigDecimal positive(SumInput given, Input<?> input) {
        BigDecimal figure = figure(given, input);
        if (figure.signum() <= 0) {
            throw new CannotAnswer(input, Message.of("given.not-positive", input, given.text(input)));
        }
        return figure;
    }

    static BigDecimal notNegative(SumInput given, Input<?> input) {
        BigDecimal figure = figure(given, input);
        if (figure.signum() < 0) {
            throw new CannotAnswer(input, Message.of("given.negative", input, given.text(input)));
        }
        return figure;
    }

    static int whole(SumInput given, Input<?> input, int least, int most) {
        BigDecimal figure = figure(given, input);
        if (figure.stripTrailingZeros().scale() > 0
                || figure.compareTo(BigDecimal.valueOf(least)) < 0
                || figure.compareTo(BigDecimal.valueOf(most)) > 0) {
            throw new CannotAnswer(input, Message.of("given.not-whole", input, given.text(input), least, most));
        }
        return figure.intValueExact();
    }

    static List<BigDecimal> figures(SumInput given, Input<?> input) {
        return figures(input, many(input, given.value(input)), item -> Message.of("given.item", input, item));
    }

    private static List<BigDecimal> figures(Input<?> input, List<SumValue> values, IntFunction<Message> place) {
        List<BigDecimal> figures = new ArrayList<>(values.size());
        for (SumValue value : values) {
            figures.add(figure(input, () -> place.apply(figures.size() + 1), value));
        }
        return figures;
    }

    static List<Length> lengths(SumInput given, Input<?> input) {
        given.inUnit();
        List<SumValue> values = many(input, given.value(input));
        List<BigDecimal> figures = figures(given, input);
        return IntStream.range(0, figures.size())
                .mapToObj(i -> length(given, values.get(i), figures.get(i)))
                .toList();
    }

    static List<Length> lengthOrLengths(SumInput given, Input<?> input) {
        return given.value(input) instanceof SumValue.Many ? lengths(given, input) : List.of(length(given, input));
    }

    static List<List<List<BigDecimal>>> groups(SumInput given, Input<?> input) {
        List<List<List<BigDecimal>>> parts = new ArrayList<>();
        for (SumValue part : group(input, place(input), given.value(input))) {
            Message ofPart = Message.of("given.part", input, parts.size() + 1);
            List<List<BigDecimal>> persons = new ArrayList<>();
            for (SumValue person : group(input, ofPart, part)) {
                Message ofPerson = Message.of("given.person", ofPart, persons.size() + 1);
                persons.add(figures(
                        input, group(input, ofPerson, person), repeat -> Message.of("given.repeat", ofPerson, repeat)));
            }
            parts.add(persons);
        }
        return parts;
    }

    static Map<String, List<BigDecimal>> byName(SumInput given, Input<?> input) {
        if (!(given.value(input) instanceof SumValue.Fields table)) {
            throw new CannotAnswer(input, Message.of("given.no-names", input));
        }
        given.inUnit();
        Map<String, List<BigDecimal>> named = new LinkedHashMap<>();
        table.values().forEach((name, value) -> {
            Message place = Message.of("given.name", input, Quoted.of(name));
            List<SumValue> values = value instanceof SumValue.Many many ? filled(input, place, many) : List.of(value);
            named.put(name, figures(input, values, item -> place));
        });
        return named;
    }

    /** @param allowed keys of a table, sorted */
    static List<SumInput> tables(SumInput given, Input<?> input, Set<String> allowed) {
        List<SumInput> tables = new ArrayList<>();
        for (SumValue value : many(input, given.value(input))) {
            if (!(value instanceof SumValue.Fields table)) {
                throw new CannotAnswer(input, Message.of("given.no-table", input, tables.size() + 1, allowed));
            }
            Set<String> unknown = new TreeSet<>(table.values().keySet());
            unknown.removeAll(allowed);
            if (!unknown.isEmpty()) {
                throw new CannotAnswer(
                        input,
                        Message.of(
                                "given.unknown-in-table",
                                input,
                                tables.size() + 1,
                                Quoted.of(String.join(", ", unknown)),
                                allowed));
            }
            tables.add(new SumInput(given.unit(), table.values()));
        }
        return tables;
    }

    static <T> T choice(SumInput given, Input<T> input) {
        SumValue value = given.value(input);
        if (value instanceof SumValue.Text typed && input.choices().containsKey(typed.text())) {
            return input.choices().get(typed.text());
        }
        Set<String> words = new TreeSet<>(input.choices().keySet());
        String text = text(input, value, "one-of", words);
        throw new CannotAnswer(input, Message.of("given.none-of", input, Quoted.of(text), words));
    }

    private static Message place(Input<?> input) {
        return Message.of("as-said", input);
    }

    private static BigDecimal figure(Input<?> input, Supplier<Message> place, SumValue value) {
        return DecimalText.read(input, place, text(input, place, value, "number"));
    }

    /** @param expected which words say what should be there, their gaps filled with {@code values} in order */
    static String text(Input<?> input, SumValue value, String expected, Object... values) {
        return text(input, () -> place(input), value, expected, values);
    }

    /** @param place the key, with the item where it is in a list */
    private static String text(
            Input<?> input, Supplier<Message> place, SumValue value, String expected, Object... values) {
        if (value instanceof SumValue.Text typed && !typed.text().isBlank()) {
            return typed.text();
        }
        Message found = value instanceof SumValue.Many
                ? Message.of("given.found.list")
                : value instanceof SumValue.Fields
                        ? Message.of("given.found.table")
                        : value instanceof SumValue.Neither neither
                                ? Message.of("as-said", neither.text())
                                : Message.of("given.found.blank");
        throw new CannotAnswer(
                input,
                Message.of("given.not-expected", place.get(), found, Message.of("given.expected." + expected, values)));
    }

    private static List<SumValue> many(Input<?> input, SumValue value) {
        if (!(value instanceof SumValue.Many many)) {
            throw new CannotAnswer(input, Message.of("given.no-list", input));
        }
        return filled(input, place(input), many);
    }

    private static List<SumValue> group(Input<?> input, Message place, SumValue value) {
        if (!(value instanceof SumValue.Many many)) {
            throw new CannotAnswer(input, Message.of("given.no-groups", place, input));
        }
        return filled(input, place, many);
    }

    private static List<SumValue> filled(Input<?> input, Message place, SumValue.Many many) {
        if (many.values().isEmpty()) {
            throw new CannotAnswer(input, Message.of("given.empty", place));
        }
        return many.values();
    }
}
