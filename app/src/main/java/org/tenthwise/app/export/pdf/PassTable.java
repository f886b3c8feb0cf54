package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.text.CutOnTheseWords;
import org.tenthwise.app.text.CutsTold;
import org.tenthwise.app.text.DocumentWords;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.JawWords;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.PassStory;
import org.tenthwise.model.record.Taken;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.StepEvent;

/**
 * Every temperature, every reading and every answer of a characteristic, pass by pass, those that do not count any more
 * struck through.
 */
final class PassTable {

    /** Its head and a row. */
    private static final double LEAST = 80;

    private static final Column ENTRY = Column.words("record.column.entry", PageFlow.LEFT, 36);
    private static final Column PLACE = Column.words("record.column.place", 88, 106);
    private static final Column READ = Column.figures("record.column.read", 250, 54);
    private static final Column SET_ON = Column.words("record.column.set-on", 258, 66);
    private static final Column CORRECTION = Column.figures("record.column.correction", 399, 73);
    private static final Column SIZE = Column.figures("record.column.size", 457, 56);
    /** Of a turn, where nothing is set on, corrected or a size, the place has the room of all that. */
    private static final Column PLACE_OF_TURN = Column.words("record.column.place", 88, 300);

    private static final Column READ_OF_TURN = Column.figures("record.column.read", 457, 60);
    private static final Column SAID = Column.words("record.column.answer", 88, 369);
    private static final Column DOCUMENT = Column.words("record.column.document", 88, 369);
    private static final Column GAUGE = Column.words("record.column.gauge", 465, 54);
    private static final Column BY = Column.words("record.column.by", 523, 72);
    private static final Column WHEN = Column.words("record.column.when", 600, PageFlow.RIGHT - 600);
    private static final Column NOTE = Column.words("", 90, PageFlow.RIGHT - 90);

    private final RecordContext matter;
    private final PageFlow flow;
    private final Line line;
    private final Page named;
    private final List<PassStory> stories;
    private final FigureText figure;
    private final CutsTold cuts;
    /** What the reading in the row above was read with. */
    private Optional<Setting> above = Optional.empty();

    /** @param named the leaf that names the characteristic already; on any other the table names it again */
    PassTable(RecordContext matter, PageFlow flow, Line line, Page named) {
        this.matter = matter;
        this.flow = flow;
        this.line = line;
        this.named = named;
        this.stories = PassStory.of(matter.sheet().run(), line).stream()
                .filter(story -> !story.pass().isEmpty())
                .toList();
        this.figure = new FigureText(matter.words());
        this.cuts = new CutsTold(matter.words());
    }

    void add() {
        if (stories.isEmpty()) {
            String nothing =
                    line.step().check().isTakenElsewhere() ? "record.nothing-taken-here" : "record.nothing-taken";
            flow.text(matter.say(nothing), Style.TEXT, PageFlow.LEFT, PageFlow.WIDTH);
            return;
        }
        flow.need(LEAST);
        head();
        for (PassStory story : stories) {
            if (line.passes().size() > 1) {
                said(
                        (pass(story) + " "
                                        + story.cut()
                                                .map(cut -> cuts.told(
                                                        cut,
                                                        line,
                                                        matter.sheet().run().register()))
                                                .orElse(""))
                                .strip(),
                        Style.SMALL_BOLD);
            }
            story.pass().onThese().ifPresent(entry -> said(onThese(story, entry), Style.SMALL));
            above = Optional.empty();
            story.temperatures().forEach(this::temperature);
            story.readings().forEach(taken -> reading(story, taken));
            story.answers().forEach(this::answer);
            story.documents().forEach(this::document);
        }
    }

    private void head() {
        if (flow.leaf() != named) {
            flow.text(matter.named(line.step()), Style.SMALL_BOLD, PageFlow.LEFT, PageFlow.WIDTH);
            flow.down(2);
        }
        List<Column> columns = new ArrayList<>(List.of(ENTRY));
        columns.addAll(
                isOfTurn()
                        ? List.of(PLACE_OF_TURN, READ_OF_TURN)
                        : line.step().check().asDocument().isPresent()
                                ? List.of(DOCUMENT)
                                : isAnswered() ? List.of(SAID) : List.of(PLACE, READ, SET_ON, CORRECTION, SIZE));
        columns.addAll(List.of(GAUGE, BY, WHEN));
        flow.head(columns, matter::say, 2, Strokes.THIN);
    }

    /** Whether nothing was read, and so only answered. */
    private boolean isAnswered() {
        return stories.stream()
                .allMatch(story ->
                        story.readings().isEmpty() && story.temperatures().isEmpty());
    }

    private boolean isOfTurn() {
        return line.step().check().asTurn().isPresent();
    }

    private void said(String words, Style style) {
        new Row(flow.wrapping()).text(NOTE, words, style).into(flow, this::head);
    }

    private String pass(PassStory story) {
        String number = story.pass()
                .why()
                .map(why -> matter.say(
                        matter.words().key("record.pass", why), story.pass().number()))
                .orElse(matter.say("record.pass", story.pass().number()));
        String value = story.finding()
                .map(finding -> matter.sentences().value(finding))
                .orElse("");
        String standing = story.finding()
                .map(finding -> matter.sentences().standing(finding))
                .orElse("");
        String said = value.isEmpty()
                ? number + " " + matter.words().sentence(standing)
                : matter.say(
                        line.step().check().isMeasured()
                                        || line.step().check().asDocument().isPresent()
                                ? "record.pass-came-to"
                                : "record.pass-answered",
                        number,
                        value,
                        standing);
        return story.pass()
                .ended()
                .filter(ended -> ended.why() == StepEvent.PassBegun.Why.RESTED_ON_CHANGED)
                .map(ended -> matter.say(
                        cut(ended) ? "record.pass.before-cut" : "record.pass.before-change", said, ended.step()))
                .orElse(said);
    }

    /** Who signed to cut with something missing, what, and why. */
    private String onThese(PassStory story, Entry entry) {
        String reason = entry.event()
                .as(StepEvent.CutOnThese.class)
                .map(StepEvent.CutOnThese::reason)
                .orElse("");
        String missing = new CutOnTheseWords(matter.words()).missing(story.step(), story.pass(), story.finding());
        return matter.say("record.on-these", missing, reason, matter.signed(entry.by(), entry));
    }

    private static boolean cut(Pass.Ended ended) {
        return ended.by()
                .event()
                .as(StepEvent.PassBegun.class)
                .filter(Event::takesMetal)
                .isPresent();
    }

    private void reading(PassStory story, Taken<Pass.Reading> taken) {
        Pass.Reading reading = taken.what();
        Slot slot = story.slot(reading);
        String place = new JawWords(matter.words()).place(story.step().check(), slot);
        boolean counts = taken.counts();
        Row row = row(reading.entry())
                .text(
                        isOfTurn() ? PLACE_OF_TURN : PLACE,
                        slot.repeat() > 1 ? matter.say("record.repeat", place, slot.repeat()) : place,
                        Style.TEXT)
                .text(GAUGE, mark(reading.setting()), Style.SMALL);
        cell(
                row,
                isOfTurn() ? READ_OF_TURN : READ,
                story.step()
                        .limits()
                        .map(limits -> Figures.read(reading.typed(), limits.unit()))
                        .orElseGet(() -> Figures.written(reading.typed())),
                isOfTurn() ? Style.BOLD : Style.TEXT,
                counts);
        if (!isOfTurn()) {
            size(story, taken, row);
        }
        row.into(flow, this::head);
        gone(taken);
    }

    /** What was set on, what the reading was corrected by, and the size that makes. */
    private void size(PassStory story, Taken<Pass.Reading> taken, Row row) {
        Pass.Reading reading = taken.what();
        boolean counts = taken.counts();
        reading.setting().ifPresent(setting -> setOn(setting, story.step(), row));
        story.finding().ifPresent(finding -> story.measured(reading)
                .filter(measured -> finding.overWires(measured).isPresent())
                .ifPresent(measured -> row.text(
                        SET_ON,
                        matter.say(
                                "record.set-on.wires", StepFigures.of(finding).overWires(measured)),
                        Style.SMALL)));
        story.measured(reading).ifPresent(measured -> {
            StepFigures.CorrectionAndValue sum = FigureText.sum(story.finding().orElseThrow(), measured);
            cell(row, CORRECTION, sum.correction(), Style.TEXT, counts);
            figure.parts(story.finding().orElseThrow(), measured)
                    .forEach(part -> row.text(CORRECTION, part, Style.SMALL));
            cell(row, SIZE, sum.value(), counts ? Style.BOLD : Style.TEXT, counts);
        });
    }

    /** In full where the gauge was set anew; below that its mark alone. */
    private void setOn(Setting setting, Step step, Row row) {
        List<String> said = figure.setOn(setting, step);
        said.subList(0, Optional.of(setting).equals(above) ? Math.min(1, said.size()) : said.size())
                .forEach(line -> row.text(SET_ON, line, Style.SMALL));
        above = Optional.of(setting);
    }

    private void temperature(Taken<Pass.Temperature> taken) {
        Pass.Temperature temperature = taken.what();
        Row row = row(temperature.entry())
                .text(PLACE, matter.say(matter.words().key("record.temperature-of", temperature.of())), Style.TEXT);
        cell(row, READ, temperature.read().toString(), Style.TEXT, taken.counts());
        row.into(flow, this::head);
        gone(taken);
    }

    private void answer(Taken<Pass.Answering> taken) {
        Pass.Answering answering = taken.what();
        String said = matter.words().say(matter.words().key("answered", answering.question()), answering.answer());
        boolean counts = taken.counts();
        Row row = row(answering.entry()).text(GAUGE, mark(taken.setting()), Style.SMALL);
        cell(row, SAID, said, counts ? Style.BOLD : Style.TEXT, counts);
        row.into(flow, this::head);
        gone(taken);
    }

    private void document(Taken<Pass.Giving> taken) {
        boolean counts = taken.counts();
        Row row = row(taken.entry());
        cell(
                row,
                DOCUMENT,
                new DocumentWords(matter.words()).whole(taken.what().document()),
                counts ? Style.BOLD : Style.TEXT,
                counts);
        row.into(flow, this::head);
        gone(taken);
    }

    private static String mark(Optional<Setting> setting) {
        return setting.map(set -> set.gauge().id()).orElse("");
    }

    private static void cell(Row row, Column column, String text, Style style, boolean counts) {
        if (counts) {
            row.text(column, text, style);
        } else {
            row.struck(column, text, style);
        }
    }

    private Row row(Entry entry) {
        return new Row(flow.wrapping())
                .text(ENTRY, String.valueOf(entry.seq()), Style.SMALL)
                .text(BY, entry.by(), Style.SMALL)
                .text(WHEN, RecordContext.time(entry.at()), Style.SMALL);
    }

    /** Why an entry does not count, in a row of its own under it. */
    private void gone(Taken<?> taken) {
        if (taken.counts()) {
            return;
        }
        String why = taken.struck()
                .map(out -> matter.say(
                        "record.struck-out",
                        out.reason(),
                        matter.signed(out.entry().by(), out.entry())))
                .orElse(matter.say("record.taken-again"));
        said(why, Style.SMALL);
    }
}
