package org.tenthwise.app.sums;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Explained;
import org.tenthwise.model.words.Message;

/**
 * What a sum is given: keys, and under each what was typed. A sum asks for what it needs by its {@link Input}; whatever
 * is missing or is something else ends the sum with a sentence that has the key and the value.
 *
 * @param unit of every length; absent if nobody said
 * @param values without the unit
 */
public record SumInput(Optional<Unit> unit, Map<String, SumValue> values) {

    private static final Input<String> UNIT = Input.name("unit");

    /**
     * What is written under its keys, the unit among them.
     *
     * @throws CannotAnswer if the unit is neither mm nor in
     */
    public static SumInput written(Map<String, SumValue> keys) {
        Map<String, SumValue> values = new LinkedHashMap<>(keys);
        SumValue unit = values.remove(UNIT.key());
        return new SumInput(Optional.ofNullable(unit).map(SumInput::unit), values);
    }

    private static Unit unit(SumValue written) {
        String text = InputReading.text(UNIT, written, "unit");
        return Unit.ofSymbol(text)
                .filter(Unit::isOfLength)
                .orElseThrow(() -> new CannotAnswer(UNIT, "unknown", Quoted.of(text)));
    }

    /** The unit of the lengths. */
    public Unit inUnit() {
        return unit.orElseThrow(() -> new CannotAnswer(UNIT, "missing"));
    }

    /** The unit of figures that are what they are in any, so that none need be given. */
    public Unit anyUnit() {
        return unit.orElse(Unit.MILLIMETRE);
    }

    /** A refusal of {@code other}, where the standard of the sum is in another unit, as its words say. */
    public void refuse(Unit other, String which) {
        if (unit.isPresent() && unit.get() == other) {
            throw new CannotAnswer(UNIT, which, other.symbol());
        }
    }

    public boolean has(Input<?> input) {
        return values.containsKey(input.key());
    }

    /**
     * What is given as {@code input}.
     *
     * @throws CannotAnswer if nothing is, or something else
     */
    public <T> T get(Input<T> input) {
        return input.reader().read(this, input);
    }

    /** What is given as {@code input}, if anything is. */
    public <T> Optional<T> find(Input<T> input) {
        return has(input) ? Optional.of(get(input)) : Optional.empty();
    }

    /**
     * Which of {@code these} is given.
     *
     * @throws CannotAnswer if none of them is, or more than one
     */
    public Input<?> oneOf(Input<?>... these) {
        List<Input<?>> there =
                Stream.of(these).<Input<?>>map(input -> input).filter(this::has).toList();
        if (there.isEmpty()) {
            throw new CannotAnswer(these[0], Message.of("given.one-of.none", List.of(these)));
        }
        if (there.size() > 1) {
            throw new CannotAnswer(
                    there.get(1),
                    Message.of("given.one-of.two", there.get(0), said(there.get(0)), there.get(1), said(there.get(1))));
        }
        return there.get(0);
    }

    /**
     * A refusal of each of {@code these} that is given, as it says nothing without {@code other}.
     *
     * @throws CannotAnswer if one is
     */
    public void refuseWithout(Input<?> other, Input<?>... these) {
        Stream.of(these).filter(any -> has(any) && !has(other)).findFirst().ifPresent(any -> {
            throw new CannotAnswer(any, Message.of("given.one-of.alone", any, said(any), other));
        });
    }

    /** The figure or the word given as {@code input}, as it was typed; with its unit where that is its own. */
    public String text(Input<?> input) {
        String typed = InputReading.text(input, value(input), "word");
        return value(input) instanceof SumValue.Text text ? text.said() : typed;
    }

    private Message said(Input<?> input) {
        return value(input) instanceof SumValue.Text typed
                ? Message.of("as-said", typed.said())
                : Message.of("given.found.list");
    }

    /** The length given as {@code input}, in the unit it was typed in. */
    public Written written(Input<Length> input) {
        return InputReading.written(this, input);
    }

    /**
     * The decimal given as {@code input}, as it was typed, whatever the input makes of it; a length of another unit in
     * the unit of all others.
     */
    public BigDecimal figure(Input<?> input) {
        return InputReading.figure(this, input);
    }

    SumValue value(Input<?> input) {
        SumValue value = values.get(input.key());
        if (value == null) {
            throw new CannotAnswer(input, Message.of("given.missing", input));
        }
        return value;
    }

    /** What {@code read} makes of each of {@code tables}; a refusal says which one it is about. */
    public static <T> List<T> each(Input<List<SumInput>> input, List<SumInput> tables, Function<SumInput, T> read) {
        List<T> all = new ArrayList<>();
        for (SumInput table : tables) {
            try {
                all.add(read.apply(table));
            } catch (CannotAnswer | IllegalArgumentException e) {
                throw new CannotAnswer(input, Message.of("given.in-table", input, all.size() + 1, Explained.why(e)));
            }
        }
        return all;
    }

    /** What {@code asked} comes to; where the model refuses, that is said of {@code input} and what was typed there. */
    public <T> T about(Input<?> input, Supplier<T> asked) {
        return CannotAnswer.about(input, why -> because(input, why), asked);
    }

    /** The same, with a reason there are words of for {@code input}, its gaps filled with {@code values} in order. */
    public <T> T about(Input<?> input, String reason, Supplier<T> asked, Object... values) {
        return CannotAnswer.about(input, models -> because(input, input.said(reason, values)), asked);
    }

    private Message because(Input<?> input, Message why) {
        if (!(values.get(input.key()) instanceof SumValue.Text typed)) {
            return Message.of("given.of", input, why);
        }
        return Message.of(
                DecimalText.isOne(typed.text()) ? "given.is" : "given.is-word", input, Quoted.of(typed.said()), why);
    }
}
