package org.tenthwise.app.ui.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Pictures;
import org.tenthwise.app.text.DrawingWords;
import org.tenthwise.app.text.EventsTold;
import org.tenthwise.app.text.OccasionWords;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/**
 * A characteristic of the record.
 *
 * @param step its number in the plan
 * @param balloon of the drawing, where it is another number than that of the step; else empty
 * @param limits as the plan writes them; empty for what only asks
 * @param value the size judged or what was answered
 * @param mark where the size lies; absent for what is not judged by one size
 * @param standing absent for what is not in this run
 * @param verdict the word of the verdict, or that it is not in this run
 * @param after what was signed for it, how many passes it took, how many readings were struck out, doubts and notes;
 *     may be empty
 */
public record RecordRow(
        int step,
        String number,
        String name,
        String balloon,
        String limits,
        String value,
        Optional<Picture> mark,
        Optional<VerdictKind> standing,
        String verdict,
        String distance,
        String after) {

    static RecordRow of(Line line, Run run, Words words) {
        Sentences sentences = new Sentences(words);
        String value = sentences.value(line.finding());
        return new RecordRow(
                line.step().number(),
                String.valueOf(line.step().number()),
                words.readable(line.step().name()),
                DrawingWords.apart(line.step())
                        .map(new DrawingWords(words)::balloon)
                        .orElse(""),
                sentences.limits(line.step()),
                value,
                line.asked() ? new Pictures(words).mark(line) : Optional.empty(),
                line.asked() ? Optional.of(line.finding().verdict().standing()) : Optional.empty(),
                line.asked()
                        ? sentences.standing(line.finding())
                        : new OccasionWords(words).notHere(run.begun().occasion()),
                line.asked() ? sentences.distance(line.finding()) : "",
                after(line, run, words));
    }

    /** All of it, for those who listen. */
    String spoken(Words words) {
        return words.spoken(number + " " + name, balloon, limits, value, verdict, distance, after);
    }

    private static String after(Line line, Run run, Words words) {
        List<String> said = new ArrayList<>();
        Sentences sentences = new Sentences(words);
        line.disposed()
                .ifPresent(disposed -> said.add(words.say(
                        "sheet.disposed",
                        words.say("disposition", disposed.disposition()),
                        words.sentence(disposed.reason()),
                        disposed.signedBy())));
        line.disposed().map(sentences::document).ifPresent(said::add);
        said.add(sentences.lapsed(line));
        said.add(sentences.repaired(line));
        said.removeIf(String::isEmpty);
        long passes = line.passes().stream().filter(pass -> !pass.isEmpty()).count();
        if (passes > 1) {
            said.add(words.say(line.step().check().isMeasured() ? "sheet.passes" : "sheet.passes-answered", passes));
        }
        long struck = line.passes().stream().flatMap(Pass::struckOut).count();
        if (struck > 0) {
            said.add(words.say("sheet.struck", struck));
        }
        new EventsTold(words).remarks(run, line.step()).forEach(said::add);
        return String.join(" ", said);
    }
}
