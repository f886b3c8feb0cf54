package org.tenthwise.app.export.pdf;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.text.DocumentWords;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.PassStory;
import org.tenthwise.model.record.Taken;
import org.tenthwise.model.run.Entry;

/** What was only asked, or proven by a paper, in one go: a row each. */
final class AnsweredTable {

    private static final Column NUMBER = Column.words("record.column.number", PageFlow.LEFT, 28);
    private static final Column WHAT = Column.words("record.fact.asked", PageFlow.LEFT + 33, 349);
    private static final Column ANSWER = Column.words("record.column.answer", PageFlow.LEFT + 388, 152);
    private static final Column GAUGE = Column.words("record.column.gauge", PageFlow.LEFT + 546, 58);
    private static final Column TIME = Column.words("record.column.time", PageFlow.LEFT + 610, 46);
    private static final Column ENTRY = Column.words("record.column.entry", PageFlow.LEFT + 660, 38);
    private static final double LEAST = 70;

    private final RecordContext matter;
    private final PageFlow flow;

    AnsweredTable(RecordContext matter, PageFlow flow) {
        this.matter = matter;
        this.flow = flow;
    }

    /** Whether a row says all there is: one round, nothing read, struck out or replaced, and nothing noted. */
    boolean holds(Line line) {
        if (!line.step().check().slots().isEmpty()
                || line.step().check().isTakenElsewhere()
                || line.passes().size() > 1
                || !matter.sheet().run().doubtsAndNotes(line.step()).isEmpty()) {
            return false;
        }
        PassStory story = matter.story(line);
        return story.readings().isEmpty()
                && story.temperatures().isEmpty()
                && story.pass().onThese().isEmpty()
                && taken(story).allMatch(Taken::counts);
    }

    /** @param lines those it holds, in their order */
    void add(List<Line> lines) {
        if (lines.isEmpty()) {
            return;
        }
        flow.need(LEAST);
        flow.heading(matter.say("record.answered"));
        String above = "";
        for (Line line : lines) {
            String by = last(line).map(this::by).orElse(above);
            if (!by.equals(above) || by.isEmpty() && line == lines.get(0)) {
                flow.need(LEAST);
                flow.text(by, Style.SMALL, PageFlow.LEFT, PageFlow.WIDTH);
                head();
                above = by;
            }
            row(line).into(flow, this::head);
        }
    }

    private String by(Entry entry) {
        return matter.words().sentence(matter.words().list(List.of(entry.by(), RecordContext.day(entry.at()))));
    }

    private Optional<Entry> last(Line line) {
        return taken(matter.story(line)).map(Taken::entry).reduce((earlier, later) -> later);
    }

    private void head() {
        flow.head(List.of(NUMBER, WHAT, ANSWER, GAUGE, TIME, ENTRY), matter::say, 2, Strokes.THIN);
    }

    private Row row(Line line) {
        PassStory story = matter.story(line);
        Row row = new Row(flow.wrapping())
                .text(NUMBER, String.valueOf(line.step().number()), Style.SMALL_BOLD)
                .text(
                        WHAT,
                        new RunIn(flow.wrapping())
                                .add(line.step().name(), Style.SMALL_BOLD)
                                .add(
                                        line.step().isOfDrawing()
                                                ? ""
                                                : line.step().drawing().requirement(),
                                        Style.SMALL)
                                .add(matter.sentences().asked(line.finding()), Style.CELL)
                                .add(line.step().method(), Style.SMALL))
                .text(
                        ANSWER,
                        new RunIn(flow.wrapping())
                                .add(matter.words().sentence(matter.sentences().standing(line.finding())), style(line))
                                .add(answers(story), Style.CELL));
        last(line).ifPresent(entry -> row.text(TIME, RecordContext.timeOfDay(entry.at()), Style.SMALL)
                .text(ENTRY, String.valueOf(entry.seq()), Style.SMALL));
        taken(story)
                .flatMap(taken -> taken.setting().stream())
                .map(setting -> setting.gauge().id())
                .distinct()
                .forEach(gauge -> row.text(GAUGE, gauge, Style.SMALL));
        return row;
    }

    private static Style style(Line line) {
        return Style.SMALL_BOLD.in(VerdictRole.of(line.finding().verdict().standing()));
    }

    private String answers(PassStory story) {
        Stream<String> answered = story.answers().stream().map(Taken::what).map(what -> matter.words()
                .say(matter.words().key("answered", what.question()), what.answer()));
        Stream<String> proven = story.documents().stream().map(taken -> new DocumentWords(matter.words())
                .whole(taken.what().document()));
        return matter.words().list(Stream.concat(answered, proven).toList());
    }

    private static Stream<Taken<?>> taken(PassStory story) {
        return Stream.of(story.answers(), story.documents()).flatMap(List::stream);
    }
}
