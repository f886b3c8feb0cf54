package org.tenthwise.app.story;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.text.Heat;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.words.Words;

/**
 * By what the step is judged, how a size is made of what the gauge reads, what its readings show besides, and what a
 * correction for temperature rests on.
 */
final class JudgedChapter {

    private final Run run;
    private final Line line;
    private final Words words;

    JudgedChapter(Run run, Line line, Words words) {
        this.run = run;
        this.line = line;
        this.words = words;
    }

    /** @param beside what there is to say beside the verdict, and does not stand there already */
    StoryChapter told(List<String> beside) {
        List<String> said = new ArrayList<>(beside);
        run.gauges()
                .setting(line.step().number())
                .flatMap(setting -> setting.gauge().sense())
                .map(sense -> words.say("story.formula", sense))
                .ifPresent(said::add);
        new Heat(words).figures(line.finding()).stream().map(words::sentence).forEach(said::add);
        return new StoryChapter(
                words.say("story.judged"), said.stream().map(StoryLine::plain).toList());
    }
}
