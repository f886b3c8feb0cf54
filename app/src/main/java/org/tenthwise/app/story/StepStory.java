package org.tenthwise.app.story;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.session.State;
import org.tenthwise.model.words.Words;

/**
 * The story of the step in hand.
 *
 * @param chapters none of them empty
 */
public record StepStory(List<StoryChapter> chapters) {

    public StepStory {
        chapters = List.copyOf(chapters);
    }

    /** As it stands at that moment: with every later entry another has to be told. */
    public static StepStory of(State state, Words words) {
        return new StepStory(Stream.of(
                        new PassChapters(state, words).all().stream(),
                        state.lastPart().stream().map(part -> new LastPartChapter(part, state, words).told()),
                        Stream.of(new JudgedChapter(state, words).told()),
                        new HoldChapters(state, words).all(),
                        Stream.of(new GaugeChapter(state, words).told()),
                        Stream.of(new SignedChapter(state, words).told()))
                .flatMap(chapter -> chapter)
                .filter(chapter -> !chapter.lines().isEmpty())
                .toList());
    }

    /** What the step came to on the part before, in a line; absent where it was not measured there. */
    public static Optional<String> lastPart(State state, Words words) {
        return state.lastPart().map(part -> new LastPartChapter(part, state, words).brief());
    }
}
