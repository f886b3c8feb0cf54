package org.tenthwise.app.sums;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** Makes figures, words, lists and tables of what was typed, or refuses it with its key and, in a list, its place. */
final class InputReading {

    private InputReading() {}

    static BigDecimal figure(SumInput given, Input<?> input) {
        return figure(input, input::key, given.value(input));
    }

    static BigDecimal positive(SumInput given, Input<?> input) {
        BigDecimal figure = figure(given, input);
        if (figure.signum() <= 0) {
            throw new CannotAnswer(input, "%s is %s: it must be more than nought".formatted(input, given.text(input)));
        }
        return figure;
    }

    static BigDecimal notNegative(SumInput given, Input<?> input) {
        BigDecimal figure = figure(given, input);
        if (figure.signum() < 0) {
            throw new CannotAnswer(
                    input, "%s is %s: it must not be less than nought".formatted(input, given.text(input)));
        }
        return figure;
    }

    static int whole(SumInput given, Input<?> input, int least, int most) {
        BigDecimal figure = figure(given, input);
        if (figure.stripTrailingZeros().scale() > 0
                || figure.compareTo(BigDecimal.valueOf(least)) < 0
                || figure.compareTo(BigDecimal.valueOf(most)) > 0) {
            throw new CannotAnswer(
                    input,
                    "%s is %s: it must be a whole number from %d to %d"
                            .formatted(input, given.text(input), least, most));
        }
        return figure.intValueExact();
    }

    static List<BigDecimal> figures(SumInput given, Input<?> input) {
        return figures(input, many(input, given.value(input)), item -> "%s, item %d,".formatted(input, item));
    }

    private static List<BigDecimal> figures(Input<?> input, List<SumValue> values, IntFunction<String> place) {
        List<BigDecimal> figures = new ArrayList<>(values.size());
        for (SumValue value : values) {
            figures.add(figure(input, () -> place.apply(figures.size() + 1), value));
        }
        return figures;
    }

    static List<Length> lengths(SumInput given, Input<?> input) {
        Unit in = given.inUnit();
        List<Length> lengths = new ArrayList<>();
        for (BigDecimal figure : figures(given, input)) {
            lengths.add(Length.of(figure, in));
        }
        return lengths;
    }

    static List<List<List<BigDecimal>>> groups(SumInput given, Input<?> input) {
        List<List<List<BigDecimal>>> parts = new ArrayList<>();
        for (SumValue part : group(input, input.key(), given.value(input))) {
            String ofPart = "%s, part %d,".formatted(input, parts.size() + 1);
            List<List<BigDecimal>> persons = new ArrayList<>();
            for (SumValue person : group(input, ofPart, part)) {
                String ofPerson = "%s person %d,".formatted(ofPart, persons.size() + 1);
                persons.add(figures(
                        input, group(input, ofPerson, person), repeat -> "%s repeat %d,".formatted(ofPerson, repeat)));
            }
            parts.add(persons);
        }
        return parts;
    }

    /** @param allowed keys of a table, sorted */
    static List<SumInput> tables(SumInput given, Input<?> input, Set<String> allowed) {
        List<SumInput> tables = new ArrayList<>();
        for (SumValue value : many(input, given.value(input))) {
            if (!(value instanceof SumValue.Fields table)) {
                throw new CannotAnswer(
                        input,
                        "%s, item %d, must be a table with %s"
                                .formatted(input, tables.size() + 1, String.join(", ", allowed)));
            }
            Set<String> unknown = new TreeSet<>(table.values().keySet());
            unknown.removeAll(allowed);
            if (!unknown.isEmpty()) {
                throw new CannotAnswer(
                        input,
                        "%s, item %d, has an unknown key %s: it takes %s"
                                .formatted(
                                        input,
                                        tables.size() + 1,
                                        Quoted.of(String.join(", ", unknown)),
                                        String.join(", ", allowed)));
            }
            tables.add(new SumInput(given.unit(), table.values()));
        }
        return tables;
    }

    static <T> T choice(SumInput given, Input<T> input) {
        String text = text(input, input.key(), given.value(input), "one of " + words(input));
        T chosen = input.choices().get(text);
        if (chosen == null) {
            throw new CannotAnswer(
                    input, "%s is \"%s\": it is one of %s".formatted(input, Quoted.of(text), words(input)));
        }
        return chosen;
    }

    private static String words(Input<?> input) {
        return String.join(", ", new TreeSet<>(input.choices().keySet()));
    }

    private static BigDecimal figure(Input<?> input, Supplier<String> place, SumValue value) {
        String text = value instanceof SumValue.Text typed && !typed.text().isBlank()
                ? typed.text()
                : text(input, place.get(), value, "a number");
        return DecimalText.read(input, place, text);
    }

    /** @param place the key, with the item where it is in a list, as the sentence of a refusal begins */
    static String text(Input<?> input, String place, SumValue value, String expected) {
        if (value instanceof SumValue.Text typed && !typed.text().isBlank()) {
            return typed.text();
        }
        String found = value instanceof SumValue.Many
                ? "a list"
                : value instanceof SumValue.Fields
                        ? "a table"
                        : value instanceof SumValue.Neither neither ? neither.text() : "blank";
        throw new CannotAnswer(input, "%s is %s: %s was expected".formatted(place, found, expected));
    }

    private static List<SumValue> many(Input<?> input, SumValue value) {
        if (!(value instanceof SumValue.Many many)) {
            throw new CannotAnswer(input, "%s must be a list".formatted(input));
        }
        return filled(input, input.key(), many);
    }

    private static List<SumValue> group(Input<?> input, String place, SumValue value) {
        if (!(value instanceof SumValue.Many many)) {
            throw new CannotAnswer(
                    input,
                    "%s is no list: %s takes lists of lists of lists, part by part, person by person, repeat by repeat"
                            .formatted(place, input));
        }
        return filled(input, place, many);
    }

    private static List<SumValue> filled(Input<?> input, String place, SumValue.Many many) {
        if (many.values().isEmpty()) {
            throw new CannotAnswer(input, "%s is an empty list".formatted(place));
        }
        return many.values();
    }
}
