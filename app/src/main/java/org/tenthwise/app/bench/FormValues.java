package org.tenthwise.app.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.sums.Input;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/**
 * What has been typed and chosen for a bench sum so far, exactly as typed.
 *
 * @param unit of every length
 * @param texts by the id of what is asked; several figures stand in one text with blanks between
 */
public record FormValues(Unit unit, Map<String, String> texts) {

    private static final int MOST_PLACES = 10;

    public FormValues {
        texts = Map.copyOf(texts);
    }

    public static FormValues nothing(Unit unit) {
        return new FormValues(unit, Map.of());
    }

    public String text(String id) {
        return texts.getOrDefault(id, "");
    }

    public String text(Input<?> input) {
        return text(input.key());
    }

    public boolean is(Input<?> input, String choice) {
        return is(input.key(), choice);
    }

    public boolean is(String id, String choice) {
        return text(id).equals(choice);
    }

    public List<String> several(String id) {
        return Arrays.stream(text(id).strip().split(" "))
                .filter(text -> !text.isEmpty())
                .toList();
    }

    /** Whether what stands there is one figure or several, none of them half typed. */
    public boolean isFinished(String id) {
        List<String> figures = several(id);
        return !figures.isEmpty() && figures.stream().allMatch(Written::isPlainDecimal);
    }

    public List<String> several(Input<?> input) {
        return several(input.key());
    }

    /** The length typed; absent while there is none. */
    public Optional<Length> length(Input<?> input) {
        return length(input.key());
    }

    /** The length typed; absent while there is none. */
    public Optional<Length> length(String id) {
        return number(id).map(figure -> Length.of(figure, unit));
    }

    /** The figure typed; absent while there is none. */
    public Optional<BigDecimal> number(String id) {
        return Written.isPlainDecimal(text(id)) ? Optional.of(new BigDecimal(text(id))) : Optional.empty();
    }

    public FormValues with(Input<?> input, String text) {
        return with(input.key(), text);
    }

    /** As it is where there is nothing to fill in. */
    FormValues with(Input<?> input, Optional<String> text) {
        return text.map(there -> with(input, there)).orElse(this);
    }

    /** A length as it is written, if it is in the unit of the form; as it is where there is none. */
    FormValues withWritten(Input<?> input, Optional<Written> length) {
        return with(input, length.map(there -> typed(there, unit)));
    }

    public FormValues with(String id, String text) {
        Map<String, String> others = new HashMap<>(texts);
        others.put(id, text);
        return new FormValues(unit, others);
    }

    /** The same figures in the other unit. */
    public FormValues in(Unit other) {
        return new FormValues(other, texts);
    }

    /** As it is written, if that is in {@code unit}. */
    static String typed(Written length, Unit unit) {
        return length.unit() == unit ? length.text() : typed(length.length(), unit);
    }

    /** A length as it would be typed, to as many places as can be. */
    static String typed(Length length, Unit unit) {
        BigDecimal figure = length.in(unit);
        return figure.setScale(Math.max(0, Math.min(figure.scale(), MOST_PLACES)), RoundingMode.HALF_EVEN)
                .toPlainString();
    }
}
