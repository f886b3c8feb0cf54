package org.tenthwise.app.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.words.Words;

/** Writes a bench sum down as one note: what was asked, its figures, what came of it, and the source. */
public final class BenchNote {

    private final Bench bench;
    private final Words words;

    public BenchNote(Bench bench, Words words) {
        this.bench = bench;
        this.words = words;
    }

    public String of(BenchForm form, FormValues filled, SumResult result) {
        List<String> figures = new ArrayList<>();
        for (FormField field : form.fields(filled)) {
            boolean ofNone = ExpansionFields.isMaterial(field.id()) && filled.is(field.id(), ExpansionFields.TYPED);
            if (!filled.text(field.id()).isBlank() && !ofNone) {
                figures.add(words.say("bench.note.figure", bench.name(field), noted(field, filled)));
            }
        }
        ResultRows read = new ResultRows(form, words);
        List<String> results = read.of(result, filled, true).stream()
                .map(row -> words.say("bench.note.figure", row.name(), row.value()))
                .toList();
        String said = words.say(
                "bench.note", words.say("bench.name", form.kind()), figures, results, words.say(result.basis()));
        return String.join(
                " ", Stream.concat(Stream.of(said), read.notes(result).stream()).toList());
    }

    /** What was typed or chosen under {@code field}, with its unit. */
    public String value(FormField field, FormValues filled) {
        String text = filled.text(field.id()).strip();
        if (field.isChoice()) {
            return chosen(field, text);
        }
        String symbol = symbol(field, filled);
        String read = field.quantity() == Quantity.LENGTH && !field.named() ? filled.shown(field.id()) : text;
        return read.replace('-', '\u2212') + (symbol.isEmpty() || text.isEmpty() ? "" : " " + symbol);
    }

    private String noted(FormField field, FormValues filled) {
        String typed = typed(field, filled);
        String value = value(field, filled);
        return typed.isEmpty() ? value : words.say("bench.note.typed", value, typed);
    }

    /** In which unit a length was typed that is shown in the other; empty where it is in the one shown. */
    public String typed(FormField field, FormValues filled) {
        if (field.quantity() != Quantity.LENGTH || field.named()) {
            return "";
        }
        return words.list(filled.figures(field.id()).stream()
                .filter(figure -> !figure.unit().equals(filled.unit()))
                .map(figure -> words.say(
                        "bench.typed",
                        figure.text().replace('-', '\u2212'),
                        figure.unit().symbol()))
                .toList());
    }

    /** What follows a figure; empty after a plain number. */
    public String symbol(FormField field, FormValues filled) {
        return switch (field.quantity()) {
            case LENGTH ->
                field.named()
                        ? filled.figures(field.id()).stream()
                                .findFirst()
                                .map(FormValues.Figure::unit)
                                .orElse(filled.unit())
                                .symbol()
                        : filled.unit().symbol();
            case ANGLE, TEMPERATURE, EXPANSION -> words.say("bench.unit", field.quantity());
            default -> "";
        };
    }

    /** A choice as a person reads it; letters, grades, classes and numbers are read as they are. */
    public String chosen(FormField field, String choice) {
        if (ExpansionFields.isMaterial(field.id())) {
            return choice.equals(ExpansionFields.TYPED) ? words.say("bench.choice.material.typed") : choice;
        }
        return choice.matches("\\d*[a-z_-]{3,}|no")
                ? words.say("bench.choice." + field.called().replace('_', '-') + "." + choice.replace('_', '-'))
                : choice;
    }
}
