package org.tenthwise.app.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.sums.Answer;
import org.tenthwise.app.sums.Given;
import org.tenthwise.app.sums.Typed;
import org.tenthwise.model.quantity.Unit;

/** One sum of the bench. Has no state: everything is made of what is filled in. */
public interface BenchSum {

    BenchKind kind();

    /** Name of the sum that is asked. */
    String sum();

    /** What is asked, in order, as far as it depends on what is chosen already. */
    List<Ask> asks(Filled filled);

    /** The results read first, the headline before all. */
    List<String> first(Filled filled);

    /** What else is given to the sum, made of what is not given as it is. */
    default Map<String, Typed> made(Filled filled) {
        return Map.of();
    }

    /** What else is filled in when {@code id} was typed or chosen. */
    default Filled follow(Filled filled, String id) {
        return filled;
    }

    /** Where each of several figures belongs, in their order; empty where that is nowhere in particular. */
    default List<String> places(Ask ask, Filled filled) {
        return List.of();
    }

    /** The unit there is no choice of; absent where there is one. */
    default Optional<Unit> onlyUnit(Filled filled) {
        return Optional.empty();
    }

    /** Which way the sum is done, where its formula reads differently; a word of the bundle's key. */
    default String formula(Filled filled) {
        return "all";
    }

    /** Drawn from the figures typed and found; absent where they draw nothing. */
    Optional<Picture> picture(Filled filled, Answer answer, Said said);

    /** What the sum is given. */
    default Given given(Filled filled) {
        Map<String, Typed> values = new LinkedHashMap<>();
        for (Ask ask : asks(filled)) {
            String text = filled.text(ask.id());
            if (ask.given() && !text.isBlank()) {
                values.put(ask.id(), ask.kind().isSeveral() ? many(filled.several(ask.id())) : new Typed.Plain(text));
            }
        }
        values.putAll(made(filled));
        return new Given(Optional.of(filled.unit()), values);
    }

    /** Chooses the usual wherever nothing that is offered is chosen. */
    default Filled settled(Filled filled) {
        Filled now = filled;
        for (Optional<Ask> open = unsettled(now); open.isPresent(); open = unsettled(now)) {
            now = now.with(open.get().id(), open.get().usual());
        }
        return onlyUnit(now).map(now::in).orElse(now);
    }

    private Optional<Ask> unsettled(Filled filled) {
        return asks(filled).stream()
                .filter(ask -> ask.kind() == Ask.Kind.CHOICE && !ask.choices().contains(filled.text(ask.id())))
                .findFirst();
    }

    /** Figures in their order. */
    static Typed many(List<String> texts) {
        return new Typed.Many(texts.stream().<Typed>map(Typed.Plain::new).toList());
    }
}
