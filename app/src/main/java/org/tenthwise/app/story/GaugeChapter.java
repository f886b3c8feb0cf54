package org.tenthwise.app.story;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.tenthwise.app.text.GaugeWords;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/** How the gauges of the step were set, the latest first; struck-out settings as such. */
final class GaugeChapter {

    private final Run run;
    private final Step step;
    private final OffsetDateTime now;
    private final Words words;

    GaugeChapter(Run run, Step step, OffsetDateTime now, Words words) {
        this.run = run;
        this.step = step;
        this.now = now;
        this.words = words;
    }

    StoryChapter told() {
        List<StoryLine> lines = new ArrayList<>(run.entries().stream()
                .filter(entry -> entry.event()
                        .as(StepEvent.GaugeSet.class)
                        .filter(set -> set.step() == step.number())
                        .isPresent())
                .map(this::line)
                .toList());
        Collections.reverse(lines);
        return new StoryChapter(words.say("story.gauges"), lines);
    }

    private StoryLine line(Entry setting) {
        String said = new GaugeWords(words).line(StepEvent.GaugeSet.in(setting).setting());
        StoryLine line = StoryLine.of(setting, said, now, words);
        return run.struck(setting.seq())
                .map(why -> line.gone(words.say(
                        "story.struck",
                        said,
                        words.sentence(why.reason()),
                        why.entry().by())))
                .orElse(line);
    }
}
