package org.tenthwise.app.story;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.GaugeWords;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/** How the gauges of the step were set, the latest first; struck-out settings as such. */
final class GaugeChapter {

    private final State state;
    private final Words words;

    GaugeChapter(State state, Words words) {
        this.state = state;
        this.words = words;
    }

    StoryChapter told() {
        Run run = state.sheet().run();
        List<StoryLine> lines = new ArrayList<>(run.entries().stream()
                .filter(entry -> entry.event()
                        .as(StepEvent.GaugeSet.class)
                        .filter(set -> set.step() == state.inHand().number())
                        .isPresent())
                .map(this::line)
                .toList());
        Collections.reverse(lines);
        return new StoryChapter(words.say("story.gauges"), lines);
    }

    private StoryLine line(Entry setting) {
        String said = new GaugeWords(words).line(StepEvent.GaugeSet.in(setting).setting());
        StoryLine line = StoryLine.of(setting, said, state.at(), words);
        return state.sheet()
                .run()
                .struck(setting.seq())
                .map(why -> line.gone(words.say(
                        "story.struck",
                        said,
                        words.sentence(why.reason()),
                        why.entry().by())))
                .orElse(line);
    }
}
