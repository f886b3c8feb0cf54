package org.tenthwise.app.command;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.app.text.Advice;
import org.tenthwise.app.text.CutsTold;
import org.tenthwise.app.text.HoldWords;
import org.tenthwise.app.text.OccasionWords;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.words.Words;

/**
 * A sheet in lines of text: number, name, value, verdict and distance of every characteristic, in columns; behind them
 * what the cuts so far took off, what to do about one that did not pass, and what was signed.
 */
final class Verdicts {

    private final Sentences sentences;
    private final Advice advice;
    private final CutsTold cuts;
    private final Words words;

    Verdicts(Words words) {
        this.sentences = new Sentences(words);
        this.advice = new Advice(words);
        this.cuts = new CutsTold(words);
        this.words = words;
    }

    List<String> of(Sheet sheet) {
        String notHere = new OccasionWords(words).notHere(sheet.run().begun().occasion());
        return Columns.laid(sheet.lines().stream()
                .map(line -> line.asked() ? row(line, sheet.run().register()) : leftOut(line, notHere))
                .toList());
    }

    private static List<String> leftOut(Line line, String notHere) {
        return List.of(number(line), line.step().name(), "", notHere, "");
    }

    private static String number(Line line) {
        String number = String.valueOf(line.step().number());
        return line.step().number() < 10 ? " " + number : number;
    }

    private List<String> row(Line line, Optional<Register> register) {
        return List.of(
                number(line),
                line.step().name(),
                sentences.value(line.finding()),
                sentences.standing(line.finding()),
                added(line, register));
    }

    /** The advice on the next cut tells of the last one. */
    private List<String> cuts(Line line, Optional<Register> register, String next) {
        List<String> told = cuts.told(line, register);
        boolean lastIsSaid = !told.isEmpty() && !next.isEmpty() && advice.tellsOfTheLastCut(line);
        return lastIsSaid ? told.subList(0, told.size() - 1) : told;
    }

    private String added(Line line, Optional<Register> register) {
        if (line.held()) {
            return words.say("walk.held", new HoldWords(words).checks(line.waitingFor()));
        }
        String distance = sentences.distance(line.finding());
        String disposed = sentences.disposition(line);
        String next = disposed.isEmpty() ? advice.next(line) : "";
        return Stream.concat(
                        Stream.of(distance),
                        Stream.concat(
                                cuts(line, register, next).stream(),
                                Stream.of(
                                        next,
                                        disposed.isEmpty() ? "" : words.say("walk.signed", disposed),
                                        sentences.repaired(line))))
                .filter(said -> !said.isEmpty())
                .collect(Collectors.joining(" "));
    }
}
