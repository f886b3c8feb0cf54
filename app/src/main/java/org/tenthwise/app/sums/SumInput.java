package org.tenthwise.app.sums;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/**
 * What a sum is given: keys, and under each what was typed. A sum asks for what it needs as what it needs; whatever is
 * missing or is something else ends the sum with a sentence that has the key and the value.
 *
 * @param unit of every length; absent if nobody said
 * @param values without the unit
 */
public record SumInput(Optional<Unit> unit, Map<String, SumValue> values) {

    private static final String UNIT = "unit";

    public SumInput {
        values = Map.copyOf(values);
    }

    /** Figures and words under their keys, as a form has them; what is blank was not given. */
    public static SumInput of(Unit unit, Map<String, String> texts) {
        Map<String, SumValue> values = new LinkedHashMap<>();
        texts.forEach((key, text) -> {
            if (!text.isBlank()) {
                values.put(key, new SumValue.Plain(text.strip()));
            }
        });
        return new SumInput(Optional.of(unit), values);
    }

    /**
     * What is written under its keys, the unit among them.
     *
     * @throws CannotAnswer if the unit is neither mm nor in
     */
    public static SumInput written(Map<String, SumValue> keys) {
        Map<String, SumValue> values = new LinkedHashMap<>(keys);
        SumValue unit = values.remove(UNIT);
        return new SumInput(Optional.ofNullable(unit).map(SumInput::unit), values);
    }

    private static Unit unit(SumValue written) {
        String text = plain(UNIT, UNIT, written, "mm or in");
        return Unit.ofSymbol(text)
                .orElseThrow(() -> new CannotAnswer(UNIT, "unit is \"%s\": it is mm or in".formatted(Quoted.of(text))));
    }

    public boolean has(String key) {
        return values.containsKey(key);
    }

    /** The unit of the lengths. */
    public Unit inUnit() {
        return unit.orElseThrow(() -> new CannotAnswer(UNIT, "unit is missing: it is mm or in"));
    }

    /** Any decimal number. */
    public BigDecimal figure(String key) {
        return figure(key, key, value(key));
    }

    public Optional<BigDecimal> figureIfGiven(String key) {
        return ifGiven(key, this::figure);
    }

    /** A decimal number more than nought. */
    public BigDecimal positive(String key) {
        BigDecimal figure = figure(key);
        if (figure.signum() <= 0) {
            throw new CannotAnswer(key, "%s is %s: it must be more than nought".formatted(key, plain(key)));
        }
        return figure;
    }

    /** A decimal number of nought or more. */
    public BigDecimal notNegative(String key) {
        BigDecimal figure = figure(key);
        if (figure.signum() < 0) {
            throw new CannotAnswer(key, "%s is %s: it must not be less than nought".formatted(key, plain(key)));
        }
        return figure;
    }

    /** A whole number, {@code least} and {@code most} included. */
    public int whole(String key, int least, int most) {
        BigDecimal figure = figure(key);
        if (figure.stripTrailingZeros().scale() > 0
                || figure.compareTo(BigDecimal.valueOf(least)) < 0
                || figure.compareTo(BigDecimal.valueOf(most)) > 0) {
            throw new CannotAnswer(
                    key, "%s is %s: it must be a whole number from %d to %d".formatted(key, plain(key), least, most));
        }
        return figure.intValueExact();
    }

    /** A length in the unit given. */
    public Length length(String key) {
        return Length.of(figure(key), inUnit());
    }

    public Optional<Length> lengthIfGiven(String key) {
        return ifGiven(key, this::length);
    }

    /** A length of more than nought. */
    public Length positiveLength(String key) {
        return Length.of(positive(key), inUnit());
    }

    /** Several decimal numbers in their order; one or more. */
    public List<BigDecimal> figures(String key) {
        return each(many(key, value(key)), (item, value) -> figure(key, "%s, item %d,".formatted(key, item), value));
    }

    /** Several lengths in their order; one or more. */
    public List<Length> lengths(String key) {
        Unit in = inUnit();
        return figures(key).stream().map(figure -> Length.of(figure, in)).toList();
    }

    /** Several groups of several, three deep: part by part, person by person, repeat by repeat. */
    public List<List<List<BigDecimal>>> groups(String key) {
        return each(group(key, key, value(key)), (part, persons) -> {
            String ofPart = "%s, part %d,".formatted(key, part);
            return each(group(key, ofPart, persons), (person, repeats) -> {
                String ofPerson = "%s person %d,".formatted(ofPart, person);
                return each(
                        group(key, ofPerson, repeats),
                        (repeat, value) -> figure(key, "%s repeat %d,".formatted(ofPerson, repeat), value));
            });
        });
    }

    /** Several tables in their order, each with no other keys than {@code allowed}. */
    public List<SumInput> tables(String key, Set<String> allowed) {
        return each(many(key, value(key)), (item, value) -> table(key, item, value, allowed));
    }

    /** What {@code read} makes of each table; a refusal says which one it is about. */
    public static <T> List<T> each(String key, List<SumInput> tables, Function<SumInput, T> read) {
        return each(tables, (item, table) -> {
            try {
                return read.apply(table);
            } catch (CannotAnswer | IllegalArgumentException e) {
                throw new CannotAnswer(key, "%s, item %d: %s".formatted(key, item, e.getMessage()));
            }
        });
    }

    /** What {@code asked} comes to; where the model refuses, that is said of {@code key} and what was typed there. */
    public <T> T about(String key, Supplier<T> asked) {
        return CannotAnswer.about(key, why -> typed(key) + why, asked);
    }

    /** The same, with a {@code why} of the sum's own. */
    public <T> T about(String key, String why, Supplier<T> asked) {
        return CannotAnswer.about(key, models -> typed(key) + why, asked);
    }

    private String typed(String key) {
        if (!(values.get(key) instanceof SumValue.Plain plain)) {
            return key + ": ";
        }
        return (DecimalText.isOne(plain.text()) ? "%s is %s: " : "%s is \"%s\": ")
                .formatted(key, Quoted.of(plain.text()));
    }

    /** A word or a name, not blank. */
    public String text(String key) {
        return plain(key);
    }

    public Optional<String> textIfGiven(String key) {
        return ifGiven(key, this::text);
    }

    /** One of the words of {@code choices}. */
    public <T> T choice(String key, Map<String, T> choices) {
        String text = plain(key, key, value(key), "one of " + String.join(", ", new TreeSet<>(choices.keySet())));
        T chosen = choices.get(text);
        if (chosen == null) {
            throw new CannotAnswer(
                    key,
                    "%s is \"%s\": it is one of %s"
                            .formatted(key, Quoted.of(text), String.join(", ", new TreeSet<>(choices.keySet()))));
        }
        return chosen;
    }

    /** What {@code read} makes of {@code key}, if it is given. */
    public <T> Optional<T> ifGiven(String key, Function<String, T> read) {
        return has(key) ? Optional.of(read.apply(key)) : Optional.empty();
    }

    private SumInput table(String key, int item, SumValue value, Set<String> allowed) {
        if (!(value instanceof SumValue.Table table)) {
            throw new CannotAnswer(
                    key,
                    "%s, item %d, must be a table with %s"
                            .formatted(key, item, String.join(", ", new TreeSet<>(allowed))));
        }
        Set<String> unknown = new TreeSet<>(table.values().keySet());
        unknown.removeAll(allowed);
        if (!unknown.isEmpty()) {
            throw new CannotAnswer(
                    key,
                    "%s, item %d, has an unknown key %s: it takes %s"
                            .formatted(
                                    key,
                                    item,
                                    Quoted.of(String.join(", ", unknown)),
                                    String.join(", ", new TreeSet<>(allowed))));
        }
        return new SumInput(unit, table.values());
    }

    private SumValue value(String key) {
        SumValue value = values.get(key);
        if (value == null) {
            throw new CannotAnswer(key, "%s is missing".formatted(key));
        }
        return value;
    }

    private String plain(String key) {
        return plain(key, key, value(key), "a word");
    }

    private static BigDecimal figure(String key, String place, SumValue value) {
        return DecimalText.read(key, place, plain(key, place, value, "a number"));
    }

    private static String plain(String key, String place, SumValue value, String expected) {
        if (value instanceof SumValue.Plain plain && !plain.text().isBlank()) {
            return plain.text();
        }
        String found = value instanceof SumValue.Many
                ? "a list"
                : value instanceof SumValue.Table
                        ? "a table"
                        : value instanceof SumValue.Neither neither ? neither.text() : "blank";
        throw new CannotAnswer(key, "%s is %s: %s was expected".formatted(place, found, expected));
    }

    private static List<SumValue> many(String key, SumValue value) {
        if (!(value instanceof SumValue.Many many)) {
            throw new CannotAnswer(key, "%s must be a list".formatted(key));
        }
        return filled(key, key, many);
    }

    private static List<SumValue> group(String key, String place, SumValue value) {
        if (!(value instanceof SumValue.Many many)) {
            throw new CannotAnswer(
                    key,
                    "%s is no list: %s takes lists of lists of lists, part by part, person by person, repeat by repeat"
                            .formatted(place, key));
        }
        return filled(key, place, many);
    }

    private static List<SumValue> filled(String key, String place, SumValue.Many many) {
        if (many.values().isEmpty()) {
            throw new CannotAnswer(key, "%s is an empty list".formatted(place));
        }
        return many.values();
    }

    /** @param read takes the place in the list, from 1, and what stands there */
    private static <A, B> List<B> each(List<A> values, BiFunction<Integer, A, B> read) {
        return IntStream.range(0, values.size())
                .mapToObj(index -> read.apply(index + 1, values.get(index)))
                .toList();
    }
}
