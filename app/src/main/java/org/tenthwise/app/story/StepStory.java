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
                        new HoldChapters(state, words).all(),
                        Optional.of(new GaugeChapter(state, words).told()).stream(),
                        Optional.of(new SignedChapter(state, words).told()).stream())
                .flatMap(chapter -> chapter)
                .filter(chapter -> !chapter.lines().isEmpty())
                .toList());
    }
}
