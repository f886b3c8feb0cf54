package org.tenthwise.app.ui.sign;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/**
 * A characteristic that did not pass.
 *
 * @param said its verdict with the distance, and what was signed for it
 */
record OpenIssue(String number, String name, VerdictKind standing, String said) {

    static OpenIssue of(Line line, Words words) {
        Sentences sentences = new Sentences(words);
        String signed = line.disposed()
                .map(disposed -> words.say(
                        "sign.disposed", words.say("disposition", disposed.disposition()), disposed.signedBy()))
                .orElseGet(() -> sentences.lapsed(line));
        String said = Stream.of(
                        words.sentence(sentences.standing(line.finding())),
                        sentences.distance(line.finding()),
                        signed,
                        sentences.repaired(line))
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(" "));
        return new OpenIssue(
                String.valueOf(line.step().number()),
                words.readable(line.step().name()),
                line.finding().verdict().standing(),
                said);
    }
}
