package org.tenthwise.app.story;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.BesideVerdict;
import org.tenthwise.app.text.Heat;
import org.tenthwise.model.words.Words;

/**
 * By what the step is judged, how a size is made of what the gauge reads, what its readings show besides, and what a
 * correction for temperature rests on.
 */
final class JudgedChapter {

    private final State state;
    private final Words words;

    JudgedChapter(State state, Words words) {
        this.state = state;
        this.words = words;
    }

    /** Without what stands beside the verdict already. */
    StoryChapter told() {
        List<String> said = new ArrayList<>(new BesideVerdict(words)
                .of(state.sheet(), state.line(), state.asked().isClosed())
                .rest());
        state.setting()
                .flatMap(setting -> setting.gauge().sense())
                .map(sense -> words.say("story.formula", sense))
                .ifPresent(said::add);
        new Heat(words)
                .figures(state.line().finding()).stream().map(words::sentence).forEach(said::add);
        return new StoryChapter(
                words.say("story.judged"), said.stream().map(StoryLine::plain).toList());
    }
}
