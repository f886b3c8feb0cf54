package org.tenthwise.app.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
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

    public String of(BenchForm sum, FormValues filled, SumResult answer) {
        List<String> figures = new ArrayList<>();
        for (FormField ask : sum.asks(filled)) {
            boolean ofNone = ExpansionFields.isMaterial(ask.id()) && filled.is(ask.id(), ExpansionFields.TYPED);
            if (!filled.text(ask.id()).isBlank() && !ofNone) {
                figures.add(words.say("bench.note.figure", bench.name(ask), value(ask, filled)));
            }
        }
        ResultRows read = new ResultRows(words, filled.unit());
        List<String> results = read.of(answer, sum.first(filled)).stream()
                .map(row -> words.say("bench.note.figure", row.name(), row.value()))
                .toList();
        String said = words.say(
                "bench.note",
                words.say("bench.name", sum.kind()),
                String.join(", ", figures),
                String.join(", ", results),
                answer.basis());
        return String.join(
                " ", Stream.concat(Stream.of(said), read.notes(answer).stream()).toList());
    }

    /** What was typed or chosen under {@code ask}, with its unit. */
    public String value(FormField ask, FormValues filled) {
        String text = filled.text(ask.id()).strip();
        if (ask.kind() == FormField.FieldKind.CHOICE) {
            return chosen(ask.id(), text);
        }
        String symbol = symbol(ask, filled);
        return text.replace('-', '\u2212') + (symbol.isEmpty() || text.isEmpty() ? "" : " " + symbol);
    }

    /** What follows a figure; empty after a plain number. */
    public String symbol(FormField ask, FormValues filled) {
        return switch (ask.kind()) {
            case LENGTH, LENGTHS -> filled.unit().symbol();
            case ANGLE, ANGLES -> words.say("bench.unit.angle");
            case TEMPERATURE -> words.say("bench.unit.temperature");
            case EXPANSION -> words.say("bench.unit.expansion");
            case COUNT, PER_INCH, CHOICE -> "";
        };
    }

    /** A choice as a person reads it; letters, grades, classes and numbers are read as they are. */
    public String chosen(String id, String choice) {
        if (ExpansionFields.isMaterial(id)) {
            return choice.equals(ExpansionFields.TYPED) ? words.say("bench.choice.material.typed") : choice;
        }
        return choice.matches("[a-z_-]{3,}|no")
                ? words.say("bench.choice." + id.replace('_', '-') + "." + choice.replace('_', '-'))
                : choice;
    }
}
