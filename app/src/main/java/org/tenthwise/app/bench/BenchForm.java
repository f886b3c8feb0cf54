package org.tenthwise.app.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.model.quantity.Unit;

/** One sum of the bench. Has no state: everything is made of what is filled in. */
public interface BenchForm {

    BenchKind kind();

    /** Name of the sum that is asked. */
    String sum();

    /** What is asked, in order, as far as it depends on what is chosen already. */
    List<FormField> asks(FormValues filled);

    /** The results read first, the headline before all. */
    List<String> first(FormValues filled);

    /** What else is given to the sum, made of what is not given as it is. */
    default Map<String, SumValue> made(FormValues filled) {
        return Map.of();
    }

    /** What else is filled in when {@code id} was typed or chosen. */
    default FormValues follow(FormValues filled, String id) {
        return filled;
    }

    /** Where each of several figures belongs, in their order; empty where that is nowhere in particular. */
    default List<String> places(FormField ask, FormValues filled) {
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

    /** Drawn from the figures typed and found; absent where they draw nothing. */
    Optional<Picture> picture(FormValues filled, SumResult answer, AnswerFormat said);

    /** What the sum is given. */
    default SumInput given(FormValues filled) {
        Map<String, SumValue> values = new LinkedHashMap<>();
        for (FormField ask : asks(filled)) {
            String text = filled.text(ask.id());
            if (ask.given() && !text.isBlank()) {
                values.put(
                        ask.id(), ask.kind().isSeveral() ? many(filled.several(ask.id())) : new SumValue.Plain(text));
            }
        }
        values.putAll(made(filled));
        return new SumInput(Optional.of(filled.unit()), values);
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
        return asks(filled).stream()
                .filter(ask -> ask.kind() == FormField.FieldKind.CHOICE
                        && !ask.choices().contains(filled.text(ask.id())))
                .findFirst();
    }

    /** Figures in their order. */
    static SumValue many(List<String> texts) {
        return new SumValue.Many(
                texts.stream().<SumValue>map(SumValue.Plain::new).toList());
    }
}
