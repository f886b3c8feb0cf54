package org.tenthwise.app.ui.plan;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Words;

/** A figure of a drawing to be typed; what it cannot be is said over it as soon as it is typed. */
final class FigureField {

    private static final int MOST = 12;

    private final Field<String> field;
    private final Words words;
    private final Function<BigDecimal, Optional<String>> refusal;

    /** @param refusal why a figure cannot be, in words; absent for one that can */
    FigureField(
            String id,
            String name,
            String question,
            boolean required,
            Words words,
            Function<BigDecimal, Optional<String>> refusal) {
        this.words = words;
        this.refusal = refusal;
        field = Field.words(id, name, question, required, MOST);
        if (!required) {
            field.onlyIfWanted();
        }
        field.valueProperty().subscribe(() -> field.aboutProperty().set(wrong().orElse("")));
    }

    Field<String> field() {
        return field;
    }

    void startWith(BigDecimal figure) {
        field.typing().ifPresent(line -> line.startAnew(figure.toPlainString()));
    }

    /** Absent while nothing is typed that can be. */
    Optional<BigDecimal> figure() {
        return wrong().isEmpty() ? typed().map(BigDecimal::new) : Optional.empty();
    }

    /** Why what is typed cannot be; absent where it can, or nothing is typed. */
    Optional<String> wrong() {
        return typed().flatMap(text -> Written.isPlainDecimal(text) && !text.startsWith("-")
                ? refusal.apply(new BigDecimal(text))
                : Optional.of(words.say("planning.figure.wrong")));
    }

    private Optional<String> typed() {
        return field.valueProperty().get();
    }
}
