package org.tenthwise.app.command;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.app.text.Words;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;

/** A sheet in lines of text: number, name, value, verdict and distance of every characteristic, in columns. */
final class Verdicts {

    private final Sentences sentences;
    private final Words words;

    Verdicts(Words words) {
        this.sentences = new Sentences(words);
        this.words = words;
    }

    List<String> of(Sheet sheet) {
        return Columns.laid(sheet.lines().stream().map(this::row).toList());
    }

    private List<String> row(Line line) {
        String number = String.valueOf(line.step().number());
        return List.of(line.step().number() < 10 ? " " + number : number, line.step().name(), sentences.value(line.finding()),
                sentences.standing(line.finding()), added(line));
    }

    private String added(Line line) {
        if (line.held()) {
            return words.say("walk.held", line.waitingFor().stream().map(String::valueOf).collect(Collectors.joining(", ")));
        }
        String distance = sentences.distance(line.finding());
        String disposed = sentences.disposition(line);
        return Stream.of(distance, disposed.isEmpty() ? "" : words.say("walk.signed", disposed), sentences.repaired(line))
                .filter(said -> !said.isEmpty()).collect(Collectors.joining(" "));
    }
}
