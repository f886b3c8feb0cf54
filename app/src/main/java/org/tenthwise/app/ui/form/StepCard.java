package org.tenthwise.app.ui.form;

import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.model.plan.Operation;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/**
 * The step a form is about, in words.
 *
 * @param place operation it belongs to
 * @param standing shape of its verdict
 * @param verdict the word of the verdict
 * @param sentence what comes to it: the value and how far it is from which limit
 * @param notes what else there is to know before the form is filled in
 */
public record StepCard(
        String number,
        String name,
        String place,
        VerdictKind standing,
        String verdict,
        String sentence,
        List<String> notes) {

    public StepCard {
        notes = List.copyOf(notes);
    }

    public static StepCard of(State state, Words words, List<String> notes) {
        Line line = state.line();
        Sentences sentences = new Sentences(words);
        Operation operation = state.sheet().plan().operation(state.inHand().operation());
        String sentence = String.join(
                " ",
                Stream.of(sentences.value(line.finding()), sentences.distance(line.finding()))
                        .filter(part -> !part.isEmpty())
                        .map(words::sentence)
                        .toList());
        return new StepCard(
                String.valueOf(state.inHand().number()),
                words.readable(state.inHand().name()),
                state.inHand().check().isInOrder()
                        ? words.say("ask.operation", operation.number(), operation.name())
                        : words.say("run.elsewhere"),
                line.finding().verdict().standing(),
                sentences.standing(line.finding()),
                sentence,
                notes);
    }
}
