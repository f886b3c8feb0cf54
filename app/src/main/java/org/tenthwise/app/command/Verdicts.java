package org.tenthwise.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.app.text.Words;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;

/** A sheet in lines of text: number, name, value, verdict and distance of every characteristic, in columns. */
final class Verdicts {

    private static final String GAP = "  ";

    private final Sentences sentences;
    private final Words words;

    Verdicts(Words words) {
        this.sentences = new Sentences(words);
        this.words = words;
    }

    List<String> of(Sheet sheet) {
        List<List<String>> rows = sheet.lines().stream().map(this::row).toList();
        List<Integer> widths = new ArrayList<>();
        for (int column = 0; column < rows.get(0).size(); column++) {
            int here = column;
            widths.add(rows.stream().mapToInt(row -> row.get(here).length()).max().orElseThrow());
        }
        return rows.stream().map(row -> laid(row, widths)).toList();
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
        return disposed.isEmpty() ? distance : (distance + " " + words.say("walk.signed", disposed)).strip();
    }

    private static String laid(List<String> row, List<Integer> widths) {
        StringBuilder laid = new StringBuilder();
        for (int column = 0; column < row.size(); column++) {
            laid.append(row.get(column)).append(" ".repeat(widths.get(column) - row.get(column).length())).append(GAP);
        }
        return laid.toString().stripTrailing();
    }
}
