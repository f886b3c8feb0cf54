package org.tenthwise.app.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tenthwise.app.sums.Input;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/**
 * What has been typed and chosen for a bench sum so far, exactly as typed. In the other unit the figures stay what they
 * were typed as, each in the unit it was typed in: nothing is rounded but what is shown of it.
 *
 * @param unit lengths are shown in, and typed in from now on
 * @param texts by the id of what is asked; several figures stand in one text with blanks between
 * @param typedIn unit of each figure of a text that was typed before the unit was changed, by the id of what is asked
 */
public record FormValues(Unit unit, Map<String, String> texts, Map<String, List<Unit>> typedIn) {

    /** A figure as typed, finished or not. */
    public record Figure(String text, Unit unit) {

        /** Absent while it is half typed. */
        public Optional<Length> length() {
            return Written.isPlainDecimal(text) ? Optional.of(Length.of(text, unit)) : Optional.empty();
        }

        /** What is read of it in {@code other}. */
        public String in(Unit other) {
            return unit.equals(other)
                    ? text
                    : length().map(exact -> AnswerFormat.typed(exact, other, new BigDecimal(text)))
                            .orElse(text);
        }
    }

    private static final int MOST_PLACES = 10;

    public FormValues {
        texts = Map.copyOf(texts);
        typedIn = Map.copyOf(typedIn);
    }

    public static FormValues nothing(Unit unit) {
        return new FormValues(unit, Map.of(), Map.of());
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

    /** What stands there, each figure with the unit it was typed in. */
    public List<Figure> figures(String id) {
        List<String> texts = several(id);
        List<Unit> units = typedIn.getOrDefault(id, List.of());
        return IntStream.range(0, texts.size())
                .mapToObj(i -> new Figure(texts.get(i), i < units.size() ? units.get(i) : unit))
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
        List<Figure> figures = figures(id);
        return figures.size() == 1 ? figures.get(0).length() : Optional.empty();
    }

    /** The lengths typed, all of them finished. */
    public List<Length> lengths(Input<?> input) {
        return figures(input.key()).stream()
                .map(figure -> figure.length().orElseThrow())
                .toList();
    }

    /** What is read of the lengths typed, in the unit of the form. */
    public List<String> read(String id) {
        return figures(id).stream().map(figure -> figure.in(unit)).toList();
    }

    /** What is read of the length typed, in the unit of the form. */
    public String shown(Input<?> input) {
        return shown(input.key());
    }

    /** What is read of the length typed, in the unit of the form. */
    public String shown(String id) {
        return String.join(" ", read(id));
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

    /** Typed or chosen now, so in the unit of the form. */
    public FormValues with(String id, String text) {
        Map<String, String> others = new HashMap<>(texts);
        others.put(id, text);
        Map<String, List<Unit>> units = new HashMap<>(typedIn);
        units.remove(id);
        return new FormValues(unit, others, units);
    }

    public FormValues with(String id, List<Figure> figures) {
        FormValues typed = with(id, figures.stream().map(Figure::text).collect(Collectors.joining(" ")));
        Map<String, List<Unit>> units = new HashMap<>(typed.typedIn());
        units.put(id, figures.stream().map(Figure::unit).toList());
        return new FormValues(unit, typed.texts(), units);
    }

    /** The same figures, shown in the other unit. */
    public FormValues in(Unit other) {
        Map<String, List<Unit>> units = new HashMap<>();
        texts.keySet()
                .forEach(id ->
                        units.put(id, figures(id).stream().map(Figure::unit).toList()));
        return new FormValues(other, texts, units);
    }

    /** As it is written, if that is in {@code unit}. */
    static String typed(Written length, Unit unit) {
        return length.unit().equals(unit) ? length.text() : typed(length.length(), unit);
    }

    /** A length as it would be typed, to as many places as can be. */
    static String typed(Length length, Unit unit) {
        BigDecimal figure = length.in(unit);
        return figure.setScale(Math.max(0, Math.min(figure.scale(), MOST_PLACES)), RoundingMode.HALF_EVEN)
                .toPlainString();
    }
}
