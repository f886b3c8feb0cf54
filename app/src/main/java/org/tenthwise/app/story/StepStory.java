package org.tenthwise.app.story;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.BesideVerdict;
import org.tenthwise.app.text.OccasionWords;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.words.Words;

/**
 * The story of a step: of the one in hand, or of one in a record.
 *
 * @param chapters none of them empty
 */
public record StepStory(List<StoryChapter> chapters) {

    public StepStory {
        chapters = List.copyOf(chapters);
    }

    /** Of the step in hand at that moment: with every later entry another has to be told. */
    public static StepStory of(State state, Words words) {
        Run run = state.sheet().run();
        Line line = state.line();
        List<String> beside = new BesideVerdict(words)
                .of(state.sheet(), line, state.asked().isClosed())
                .rest();
        return of(Stream.of(
                new PassChapters(run, line, state.at(), words).all().stream(),
                state.lastPart().stream().map(part -> new LastPartChapter(part, state, words).told()),
                Stream.of(new JudgedChapter(run, line, words).told(beside)),
                new HoldChapters(state, words).all(),
                Stream.of(new GaugeChapter(run, line.step(), state.at(), words).told()),
                Stream.of(new SignedChapter(state.sheet(), line, state.at(), words).told(true)),
                Stream.of(purpose(state.sheet(), words))));
    }

    /** Of the run, not of the step: what it is for and what stands behind that. */
    private static StoryChapter purpose(Sheet sheet, Words words) {
        return new StoryChapter(
                words.say("story.purpose"),
                new OccasionWords(words)
                        .whole(sheet).stream().map(StoryLine::plain).toList());
    }

    /**
     * Of any step in the record of its run, with what stands beside its verdict while it is in hand.
     *
     * @param now on its day a moment is told by the hour alone
     */
    public static StepStory inRecord(Sheet sheet, Line line, OffsetDateTime now, Words words) {
        Run run = sheet.run();
        BesideVerdict.Split beside = new BesideVerdict(words)
                .of(sheet, line, run.closed().isPresent() || sheet.putAway().isPresent());
        return of(Stream.of(
                new PassChapters(run, line, now, words).all().stream(),
                Stream.of(new JudgedChapter(run, line, words)
                        .told(Stream.of(beside.shown(), beside.rest())
                                .flatMap(List::stream)
                                .toList())),
                Stream.of(new GaugeChapter(run, line.step(), now, words).told()),
                Stream.of(new SignedChapter(sheet, line, now, words).told(false))));
    }

    private static StepStory of(Stream<Stream<StoryChapter>> chapters) {
        return new StepStory(chapters.flatMap(chapter -> chapter)
                .filter(chapter -> !chapter.lines().isEmpty())
                .toList());
    }

    /** What the step came to on the part before, in a line; absent where it was not measured there. */
    public static Optional<String> lastPart(State state, Words words) {
        return state.lastPart().map(part -> new LastPartChapter(part, state, words).brief());
    }
}
