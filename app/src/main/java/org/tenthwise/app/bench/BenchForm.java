package org.tenthwise.app.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.model.quantity.Unit;

/** The form of one sum of the bench. Has no state: everything is made of what is filled in. */
public interface BenchForm {

    BenchKind kind();

    /** Name of the sum that is asked. */
    String sum();

    /** Draws the sign on its key. */
    void sign(SignSketch sketch);

    /** What is asked, in order, as far as it depends on what is chosen already. */
    List<FormField> fields(FormValues filled);

    /** The outputs read first, the headline before all. */
    List<Output<?>> first(FormValues filled);

    /** What else is given to the sum, made of what is not given as it is. */
    default Map<String, SumValue> made(FormValues filled) {
        return Map.of();
    }

    /** What else is filled in when {@code id} was typed or chosen. */
    default FormValues follow(FormValues filled, String id) {
        return filled;
    }

    /** Where each of several figures belongs, in their order; empty where that is nowhere in particular. */
    default List<String> places(FormField field, FormValues filled) {
        return List.of();
    }

    /** The unit there is no choice of; absent where there is one. */
    default Optional<Unit> onlyUnit(FormValues filled) {
        return Optional.empty();
    }

    /** Which way the sum is done, where its formula reads differently; a word of the bundle's key. */
    default String formula(FormValues filled) {
        return "all";
    }

    /** To how many places an angle is known at the most; absent where that is as for any. */
    default Optional<Integer> places(Output<?> angle) {
        return Optional.empty();
    }

    /** Under which the name of an output stands among the words, where another form finds something else by its key. */
    default String called(Output<?> output, FormValues filled) {
        return output.key();
    }

    /** What follows a figure that is no length; empty where nothing does. */
    default String symbol(Output<?> figure, FormValues filled) {
        return "";
    }

    /** How an output that is a list reads, a row for each; empty where it is only drawn. */
    default List<ResultRow> rows(Output<?> output, SumResult result, AnswerFormat format) {
        return List.of();
    }

    /** Whether {@code output} is read out, and not only drawn. */
    default boolean shows(Output<?> output) {
        return true;
    }

    /** Whether what is found is typed, set or cut to as it stands, so that its notes are read before anything else. */
    default boolean goesIntoTheControl() {
        return false;
    }

    /** Drawn from the figures typed and found; absent where they draw nothing. */
    Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format);

    /** What the sum is given. */
    default SumInput given(FormValues filled) {
        Map<String, SumValue> values = new LinkedHashMap<>();
        for (FormField field : fields(filled)) {
            String text = filled.text(field.id());
            if (field.given() && !text.isBlank()) {
                values.put(
                        field.id(),
                        field.quantity() == Quantity.LENGTH ? lengths(field, filled) : given(field, filled));
            }
        }
        values.putAll(made(filled));
        return new SumInput(Optional.of(filled.unit()), values);
    }

    private static SumValue given(FormField field, FormValues filled) {
        return field.several()
                ? SumValue.Many.of(filled.several(field.id()))
                : new SumValue.Text(filled.text(field.id()));
    }

    /** Those typed in the other unit with it. */
    private static SumValue lengths(FormField field, FormValues filled) {
        List<SumValue> figures = filled.figures(field.id()).stream()
                .<SumValue>map(figure -> new SumValue.Text(
                        figure.text(), Optional.of(figure.unit()).filter(unit -> !unit.equals(filled.unit()))))
                .toList();
        return field.several() || figures.size() != 1 ? new SumValue.Many(figures) : figures.get(0);
    }

    /** Chooses the usual wherever nothing that is offered is chosen. */
    default FormValues settled(FormValues filled) {
        FormValues now = filled;
        for (Optional<FormField> open = unsettled(now); open.isPresent(); open = unsettled(now)) {
            now = now.with(open.get().id(), open.get().usual());
        }
        return onlyUnit(now).map(now::in).orElse(now);
    }

    private Optional<FormField> unsettled(FormValues filled) {
        return fields(filled).stream()
                .filter(field -> field.isChoice() && !field.choices().contains(filled.text(field.id())))
                .findFirst();
    }
}
