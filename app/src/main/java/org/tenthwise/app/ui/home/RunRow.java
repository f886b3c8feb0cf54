package org.tenthwise.app.ui.home;

import java.util.Optional;
import org.tenthwise.app.session.RunSummary;
import org.tenthwise.app.text.Advice;
import org.tenthwise.app.text.OutcomeWords;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Operation;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/**
 * A run begun, in words.
 *
 * @param place operation of the step it would go on with; that it is closed, once it is
 * @param standing shape of where it stands; once it is closed, of its outcome, where that has one
 * @param where where it stands
 * @param when when something was last done
 * @param closed whether it can only be looked at
 * @param spoken all of it, for those who listen
 */
public record RunRow(
        RunSummary summary,
        String part,
        String revision,
        String serial,
        String place,
        Optional<VerdictKind> standing,
        String where,
        String when,
        boolean closed,
        String spoken) {

    static RunRow of(RunSummary summary, When when, Words words) {
        Event.Begun begun = summary.sheet().run().begun();
        Optional<Event.Closed> closed = summary.sheet().run().closed();
        Line line = summary.sheet().line(summary.inHand().number());
        Sentences sentences = new Sentences(words);
        String where = closed.isPresent() ? sentences.outcome(summary.sheet()) : stands(line, sentences, words);
        String place = closed.isPresent() ? words.say("home.closed") : operation(summary, words);
        String part = begun.part().number();
        String serial = words.say("home.serial", begun.serial());
        String revision = words.say("home.revision", begun.part().revision());
        return new RunRow(
                summary,
                part,
                revision,
                serial,
                place,
                closed.isPresent()
                        ? OutcomeWords.shape(summary.sheet())
                        : Optional.of(line.finding().verdict().standing()),
                where,
                when.of(summary.last()),
                closed.isPresent(),
                words.say("home.spoken", part, revision, serial, place, where));
    }

    private static String operation(RunSummary summary, Words words) {
        Operation operation = summary.sheet().plan().operation(summary.inHand().operation());
        return words.say("ask.operation", operation.number(), operation.name());
    }

    private static String stands(Line line, Sentences sentences, Words words) {
        Step step = line.step();
        return switch (line.finding().verdict().standing()) {
            case OPEN, PASS -> words.say("home.at", step.number(), step.name());
            case FAIL ->
                line.finding().step().check() instanceof Check.RunOut
                        ? words.say("home.at-failed", step.number(), step.name())
                        : waits(line, words);
            case CUT_AGAIN -> words.say("home.at-cut", step.number(), sentences.distance(line.finding()));
            case UNPROVEN -> words.say("home.at-unproven", step.number(), step.name());
        };
    }

    private static String waits(Line line, Words words) {
        if (line.disposed().isEmpty() && line.step().stepClass() == StepClass.SET_UP) {
            return words.say(
                    "home.at-put-right", line.step().number(), line.step().name());
        }
        return line.disposed().isPresent()
                ? words.say("home.at-disposed", line.step().number(), new Advice(words).next(line))
                : words.say("home.at-waits", line.step().number(), line.step().name());
    }
}
