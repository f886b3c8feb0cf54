package org.tenthwise.app.story;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.session.State;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.HoldOpened;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Settled;
import org.tenthwise.model.words.Words;

/** The hold point that kept the step shut or keeps it so, and the one it is itself. */
final class HoldChapters {

    private final State state;
    private final Words words;

    HoldChapters(State state, Words words) {
        this.state = state;
        this.words = words;
    }

    Stream<StoryChapter> all() {
        int here = state.inHand().number();
        List<Step> steps = state.sheet().plan().steps();
        Optional<Step> before = steps.stream()
                .filter(any -> state.inHand().check().isInOrder())
                .takeWhile(step -> step.number() != here)
                .filter(HoldChapters::isOne)
                .reduce((earlier, later) -> later);
        return Stream.concat(
                before.map(step -> told("story.hold.before", step)).stream(),
                Stream.of(state.inHand()).filter(HoldChapters::isOne).map(step -> told("story.hold.after", step)));
    }

    private static boolean isOne(Step step) {
        return !step.hold().isEmpty();
    }

    private StoryChapter told(String heading, Step hold) {
        return new StoryChapter(
                words.say(heading),
                Optional.ofNullable(state.opened().get(hold.number()))
                        .map(HoldOpened::settled)
                        .map(settled -> settled.stream().map(this::settled).toList())
                        .orElseGet(() -> hold.hold().stream().map(this::waits).toList()));
    }

    private StoryLine settled(Settled settled) {
        Step step = settled.line().step();
        return StoryLine.of(
                        settled.by(),
                        words.say(words.key("story.settled", settled.how()), step.number(), step.name()),
                        state.at(),
                        words)
                .by(settled.person());
    }

    /** Of a hold point that is shut: what is settled of it, and what is not. */
    private StoryLine waits(int number) {
        Line line = state.sheet().line(number);
        return StoryLine.plain(words.say(
                line.settled() ? "story.settled" : "story.not-settled",
                number,
                line.step().name()));
    }
}
