package org.tenthwise.app.story;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.text.CutsTold;
import org.tenthwise.app.text.DocumentWords;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.JawWords;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.PassStory;
import org.tenthwise.model.record.Taken;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.words.Words;

/** The passes of this part at the step, the one in hand first; in each what was taken, in its order. */
final class PassChapters {

    private final Run run;
    private final Line line;
    private final OffsetDateTime now;
    private final Words words;
    private final Sentences sentences;
    private final List<PassStory> passes;

    PassChapters(Run run, Line line, OffsetDateTime now, Words words) {
        this.run = run;
        this.line = line;
        this.now = now;
        this.words = words;
        this.sentences = new Sentences(words);
        this.passes = PassStory.of(run, line);
    }

    List<StoryChapter> all() {
        List<StoryChapter> chapters =
                new ArrayList<>(passes.stream().map(this::chapter).toList());
        Collections.reverse(chapters);
        return chapters;
    }

    private StoryChapter chapter(PassStory story) {
        String serial = run.begun().serial();
        String heading = passes.size() == 1
                ? words.say("story.this", serial)
                : words.say("story.this.pass", serial, story.pass().number());
        return new StoryChapter(
                heading,
                Stream.of(
                                begun(story).stream(),
                                taken(story).map(line -> inPass(story, line)),
                                cameTo(story).stream().map(line -> inPass(story, line)))
                        .flatMap(lines -> lines)
                        .toList());
    }

    /** On whatever page it is read: of several passes each line names its own. */
    private StoryLine inPass(PassStory story, StoryLine line) {
        return passes.size() == 1
                ? line
                : line.saying(words.say("story.in-pass", story.pass().number(), line.words()));
    }

    /** What the pass was begun for; of a cut what it was to take off and took off, where that can be told. */
    private Optional<StoryLine> begun(PassStory story) {
        return passes.stream()
                .filter(before -> before.pass().number() == story.pass().number() - 1)
                .flatMap(before -> before.pass().ended().stream())
                .map(ended -> StoryLine.of(
                        ended.by(),
                        Stream.concat(
                                        Stream.of(words.say(words.key("story.begun", ended.why()), ended.step())),
                                        cut(story).stream())
                                .reduce((why, cut) -> why + " " + cut)
                                .orElseThrow(),
                        now,
                        words))
                .findFirst();
    }

    private Optional<String> cut(PassStory story) {
        return story.cut().map(cut -> new CutsTold(words).told(cut, line, run.register()));
    }

    private Stream<StoryLine> taken(PassStory story) {
        Stream<Map.Entry<Long, StoryLine>> readings = story.readings().stream()
                .map(read -> Map.entry(read.entry().seq(), line(read, size(story, read.what()))));
        Stream<Map.Entry<Long, StoryLine>> temperatures = story.temperatures().stream()
                .map(taken -> Map.entry(
                        taken.entry().seq(),
                        line(
                                taken,
                                words.say(
                                        words.key(
                                                "story.temperature",
                                                taken.what().of()),
                                        taken.what().read()))));
        Stream<Map.Entry<Long, StoryLine>> answers = story.answers().stream()
                .map(given -> Map.entry(
                        given.entry().seq(),
                        line(
                                given,
                                words.say(
                                        words.key("answered", given.what().question()),
                                        given.what().answer()))));
        Stream<Map.Entry<Long, StoryLine>> documents = story.documents().stream()
                .map(given -> Map.entry(
                        given.entry().seq(),
                        line(given, new DocumentWords(words).whole(given.what().document()))));
        return Stream.of(readings, temperatures, answers, documents)
                .flatMap(lines -> lines)
                .sorted(Comparator.comparing(Map.Entry::getKey))
                .map(Map.Entry::getValue);
    }

    /** With the gauge it was taken with, and struck out as such. */
    private StoryLine line(Taken<?> taken, String said) {
        String with = taken.setting()
                .map(Setting::gauge)
                .map(gauge -> words.say("story.with", said, gauge.id()))
                .orElse(said);
        StoryLine line = StoryLine.of(taken.entry(), with, now, words);
        if (taken.struck().isPresent()) {
            return line.gone(words.say(
                    "story.struck",
                    with,
                    words.sentence(taken.struck().get().reason()),
                    taken.struck().get().entry().by()));
        }
        return taken.isReplaced() ? line.gone(words.say("story.replaced", with)) : line;
    }

    private String size(PassStory story, Pass.Reading reading) {
        Slot slot = story.slot(reading);
        Check check = story.step().check();
        StepFigures figures = StepFigures.of(story.found().orElseThrow());
        Optional<String> size = story.measured(reading)
                .filter(measured -> check.asTurn().isEmpty())
                .map(figures::size);
        return new ReadingTold(words)
                .said(
                        check,
                        new JawWords(words).place(check, slot),
                        slot.repeat(),
                        size,
                        Figures.read(reading.typed(), figures.unit()));
    }

    /** What an earlier pass came to; that in hand stands at the head. */
    private Optional<StoryLine> cameTo(PassStory story) {
        return story.pass().ended().isPresent() ? story.found().map(this::cameTo) : Optional.empty();
    }

    private StoryLine cameTo(Finding found) {
        String value = sentences.value(found);
        String verdict = words.say("story.verdict", sentences.standing(found), sentences.distance(found))
                .strip();
        return StoryLine.plain(value.isEmpty() ? verdict : words.say("story.came-to", value, verdict));
    }
}
