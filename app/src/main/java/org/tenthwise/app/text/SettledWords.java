package org.tenthwise.app.text;

import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.words.Words;

/** What a step came to that is settled, in a line for whoever is at the next one already. */
public final class SettledWords {

    private final Words words;
    private final Sentences sentences;

    public SettledWords(Words words) {
        this.words = words;
        this.sentences = new Sentences(words);
    }

    /** "13 Bore Ø30 H7: Pass, 30.014, 0.007 inside"; what was signed for it stands behind. */
    public String line(Line line) {
        Finding finding = line.finding();
        String found = words.list(Stream.of(
                        Optional.of(sentences.standing(finding)),
                        Optional.of(sentences.value(finding)),
                        Optional.of(sentences.answeredBeside(finding)),
                        finding.isOfOneSize()
                                ? finding.verdict().margin().map(margin -> distance(finding, margin))
                                : Optional.<String>empty(),
                        finding.verdict().passed()
                                ? Optional.<String>empty()
                                : line.disposed()
                                        .map(signed -> words.say("record.short-disposition", signed.disposition())))
                .flatMap(Optional::stream)
                .filter(part -> !part.isEmpty())
                .toList());
        return words.say("run.finished", line.step().number(), line.step().name(), found);
    }

    private String distance(Finding finding, Verdict.Margin margin) {
        String distance = StepFigures.of(finding).distance(margin.distance());
        if (margin.distance().signum() == 0) {
            return words.say("run.finished.on-limit");
        }
        return words.say(margin.inside() ? "run.finished.inside" : "run.finished.outside", distance);
    }
}
