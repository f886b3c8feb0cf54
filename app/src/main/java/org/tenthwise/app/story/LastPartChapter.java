package org.tenthwise.app.story;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.app.history.LastPart;
import org.tenthwise.app.history.ReadingSummary;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.StepSummary;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.Dates;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.words.Words;

/**
 * What the part before came to at the step. Its serial stands before every line, so that none is taken for one of the
 * part in hand, on whatever page it is read.
 */
final class LastPartChapter {

    private final LastPart part;
    private final State state;
    private final Words words;
    private final Sentences sentences;

    LastPartChapter(LastPart part, State state, Words words) {
        this.part = part;
        this.state = state;
        this.words = words;
        this.sentences = new Sentences(words);
    }

    StoryChapter told() {
        return new StoryChapter(
                words.say("story.last", part.run().serial()),
                Stream.of(Stream.of(found()), otherwise().stream().map(StoryLine::plain), readings())
                        .flatMap(lines -> lines)
                        .map(this::ofItsSerial)
                        .toList());
    }

    /** In a line for the step itself: nothing in it can be taken for a verdict on the part in hand. */
    String brief() {
        StepSummary found = part.found();
        List<String> said = new ArrayList<>();
        found.value().map(value -> figures().judged(value)).ifPresent(said::add);
        if (!found.verdict().passed() || said.isEmpty()) {
            said.add(words.say("story.last.was", found.verdict().standing()));
        }
        if (part.isOfAnotherRevision(state.sheet().plan())) {
            said.add(words.say("story.last.of-rev", part.run().revision()));
        }
        if (part.hadOtherLimits(state.inHand())) {
            said.add(words.say("story.last.other-limits"));
        }
        return words.say("story.last.brief", part.run().serial(), said);
    }

    private StoryLine ofItsSerial(StoryLine line) {
        return line.saying(words.say("story.last.of", part.run().serial(), line.words()));
    }

    private StoryLine found() {
        StepSummary found = part.found();
        String distance = found.value().isEmpty()
                ? ""
                : found.verdict()
                        .margin()
                        .map(margin -> sentences.distance(part.step(), found.places(), margin))
                        .orElse("");
        String verdict = words.say(
                        "story.verdict", words.say("verdict", found.verdict().standing()), distance)
                .strip();
        String said = found.value()
                .map(value -> words.say("story.came-to", figures().judged(value), verdict))
                .orElse(verdict);
        String all = found.disposed()
                .map(signed -> words.say(
                        "story.last.disposed", said, words.say("disposition", signed.disposition()), signed.signedBy()))
                .orElse(said);
        return found.found()
                .map(last -> new StoryLine(all, new Dates(words).lately(last.at(), state.at()), last.by(), true))
                .orElseGet(() -> StoryLine.plain(all));
    }

    /** What was otherwise there than it is here. */
    private List<String> otherwise() {
        Plan plan = state.sheet().plan();
        List<String> said = new ArrayList<>();
        if (part.isOfAnotherRevision(plan)) {
            said.add(words.say(
                    "story.last.revision", part.run().revision(), plan.part().revision()));
        }
        if (part.isOfAnotherPlan(plan)) {
            String issue = part.run().stand().map(RunFacts.Stand::issue).orElse("");
            said.add(
                    issue.equals(plan.issue())
                            ? words.say("story.last.text", issue)
                            : words.say("story.last.issue", issue, plan.issue()));
        }
        if (part.hadOtherLimits(state.inHand())) {
            said.add(words.say("story.last.limits", sentences.limits(part.step()), sentences.limits(state.inHand())));
        }
        if (!part.run().machine().equals(state.sheet().run().begun().machine())
                && !part.run().machine().isBlank()) {
            said.add(words.say("story.last.machine", part.run().machine()));
        }
        return said;
    }

    private Stream<StoryLine> readings() {
        boolean onePass =
                part.readings().stream().map(ReadingSummary::pass).distinct().count() == 1;
        return part.readings().stream().map(read -> {
            StoryLine line = reading(read);
            return onePass ? line : line.saying(words.say("story.in-pass", read.pass(), line.words()));
        });
    }

    private StoryLine reading(ReadingSummary read) {
        String said = new ReadingTold(words)
                .said(
                        part.step().check(),
                        read.place(),
                        read.repeat(),
                        read.value()
                                .filter(value -> part.step().check().asTurn().isEmpty())
                                .map(value -> figures().size(value, read.places())),
                        Figures.read(read.typed(), figures().unit()));
        String with = read.gauge()
                .map(gauge -> words.say("story.with", said, gauge.mark()))
                .orElse(said);
        StoryLine line = new StoryLine(with, new Dates(words).lately(read.at(), state.at()), read.by(), true);
        return read.struck()
                .map(why -> line.gone(words.say("story.last.struck", with, words.sentence(why))))
                .orElseGet(() -> read.value().isEmpty() ? line.gone(words.say("story.replaced", with)) : line);
    }

    private StepFigures figures() {
        return StepFigures.of(part.step(), part.found().places());
    }
}
