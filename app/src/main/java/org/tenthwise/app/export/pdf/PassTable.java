package org.tenthwise.app.export.pdf;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.text.CutOnTheseWords;
import org.tenthwise.app.text.CutsTold;
import org.tenthwise.app.text.DocumentWords;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.JawWords;
import org.tenthwise.app.text.ReadingPlace;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Finding;
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

    /** A line of the round, the head and a row. */
    private static final double LEAST = 64;

    private static final Column ENTRY = Column.words("record.column.entry", PageFlow.LEFT, 40);
    private static final Column SIZE = Column.figures("record.column.size", PageFlow.LEFT + 292, 49);
    private static final Column TIME = Column.words("record.column.time", PageFlow.LEFT + 297, 47);
    private static final Column READ_OF_TURN = Column.figures("record.column.read", PageFlow.LEFT + 292, 50);

    /** Between the number of an entry, or what stands over it, and what it says. */
    private static final double GAP = 6;

    /** What a temperature needs. */
    private static final double DEGREES = 46;

    private final RecordContext matter;
    private final PageFlow flow;
    private final Line line;
    private final List<PassStory> stories;
    private final FigureText figure;
    private final CutsTold cuts;
    private final ReadingColumns rows;
    /** As wide as its figures need, or as what stands over it; it is the places that have less room then. */
    private final Column correction;

    private final Column read;
    private final Column place;
    /** Of a turn, where nothing is set on, corrected or a size, the place has the room of all that. */
    private final Column placeOfTurn;

    private final Column answered;
    private final Column ofDocument;
    private final Column below;
    private Page named;
    /** What the next rows are taken with, by whom and on which day; one of it for all of them. */
    private String above = "";
    /** What stands over the next rows, with that behind it. */
    private RunIn over;

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
        this.over = new RunIn(flow.wrapping());
        this.correction = figures("record.column.correction", SIZE.left() - 4, 54);
        this.read = figures("record.column.read", correction.left() - 3, 55);
        double entry = flow.wrapping().widestWord(matter.say(ENTRY.head()), Style.SMALL);
        double left = ENTRY.left() + Math.max(ENTRY.width(), entry + GAP);
        this.place = Column.words("record.column.place", left, read.left() - left - 3);
        this.placeOfTurn = Column.words("record.column.place", left, PageFlow.LEFT + 240 - left);
        this.answered = Column.words("record.column.answer", left, SIZE.right() - left);
        this.ofDocument = Column.words("record.column.document", left, SIZE.right() - left);
        this.below = Column.words("", left, TIME.right() - left);
        this.rows = new ReadingColumns(matter, flow, columns(), this::name);
    }

    void add() {
        if (stories.isEmpty()) {
            String nothing =
                    line.step().check().isTakenElsewhere() ? "record.nothing-taken-here" : "record.nothing-taken";
            flow.text(matter.say(nothing), Style.CELL, PageFlow.LEFT, PageFlow.WIDTH);
            return;
        }
        for (PassStory story : stories) {
            if (line.passes().size() > 1) {
                over.add(pass(story), Style.SMALL_BOLD)
                        .add(
                                story.cut()
                                        .map(cut -> cuts.told(
                                                cut, line, matter.sheet().run().register()))
                                        .orElse(""),
                                Style.SMALL_BOLD);
            }
            story.pass().onThese().ifPresent(entry -> over.add(onThese(story, entry), Style.SMALL));
            above = "";
            story.temperatures().forEach(this::temperature);
            story.readings().forEach(taken -> reading(story, taken));
            story.answers().forEach(this::answer);
            story.documents().forEach(this::document);
            rows.end();
        }
        over.into(flow, PageFlow.LEFT, PageFlow.WIDTH, 14);
    }

    private Column figures(String head, double right, double least) {
        return Column.figures(head, right, Math.max(least, flow.wrapping().widestWord(matter.say(head), Style.SMALL)));
    }

    private void name() {
        if (flow.leaf() != named) {
            flow.text(matter.named(line.step()), Style.SMALL_BOLD, PageFlow.LEFT, PageFlow.WIDTH);
            flow.down(2);
            named = flow.leaf();
        }
    }

    private List<Column> columns() {
        boolean isAnswered = stories.stream()
                .allMatch(story ->
                        story.readings().isEmpty() && story.temperatures().isEmpty());
        if (line.step().check().asDocument().isPresent()) {
            return List.of(ENTRY, ofDocument, TIME);
        }
        if (isAnswered) {
            return List.of(ENTRY, answered, TIME);
        }
        return isOfTurn()
                ? List.of(ENTRY, placeOfTurn, READ_OF_TURN, TIME)
                : List.of(ENTRY, place, read, correction, SIZE, TIME);
    }

    private boolean isOfTurn() {
        return line.step().check().asTurn().isPresent();
    }

    /** Says by whom, on which day and with what the next rows are taken, where the rows before were otherwise. */
    private void under(Entry entry, List<String> with) {
        String said = matter.words()
                .list(Stream.concat(Stream.of(entry.by(), RecordContext.day(entry.at())), with.stream())
                        .toList());
        if (said.equals(above) && over.isEmpty()) {
            return;
        }
        rows.end();
        above = said;
        flow.need(LEAST);
        name();
        over.add(matter.words().sentence(said), Style.SMALL).into(flow, PageFlow.LEFT, PageFlow.WIDTH, 14);
        over = new RunIn(flow.wrapping());
    }

    /** A gauge and what it was set on. */
    private List<String> with(Optional<Setting> setting, Step step) {
        return setting.map(set -> Stream.concat(
                                Stream.of(set.gauge().id()),
                                step.limits().isPresent()
                                        ? Stream.of(String.join(" ", figure.setOn(set, step)))
                                                .filter(on -> !on.isEmpty())
                                        : Stream.empty())
                        .toList())
                .orElse(List.of());
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
        under(reading.entry(), with(reading.setting(), story.step()));
        Slot slot = story.slot(reading);
        String where = new JawWords(matter.words()).place(story.step().check(), slot);
        String typed = story.step()
                .limits()
                .map(limits -> Figures.read(reading.typed(), limits.unit()))
                .orElseGet(() -> Figures.written(reading.typed()));
        rows.add(right -> {
            Row row = row(reading.entry(), right)
                    .text(
                            (isOfTurn() ? placeOfTurn : place).moved(right),
                            new ReadingPlace(matter.words()).of(story.step().check(), where, slot.repeat()),
                            Style.CELL);
            cell(
                    row,
                    (isOfTurn() ? READ_OF_TURN : read).moved(right),
                    typed,
                    isOfTurn() ? Style.SMALL_BOLD : Style.CELL,
                    taken.counts());
            if (!isOfTurn()) {
                size(story, taken, row, right);
            }
            return gone(taken, row, right);
        });
    }

    /** What the reading was corrected by, and the size that makes; of wires, what they make the reading bigger by. */
    private void size(PassStory story, Taken<Pass.Reading> taken, Row row, double right) {
        Pass.Reading reading = taken.what();
        boolean counts = taken.counts();
        story.measured(reading).ifPresent(measured -> {
            Finding finding = story.finding().orElseThrow();
            StepFigures.CorrectionAndValue sum = FigureText.sum(finding, measured);
            cell(row, correction.moved(right), sum.correction(), Style.CELL, counts);
            figure.parts(finding, measured).forEach(part -> row.text(correction.moved(right), part, Style.SMALL));
            if (finding.overWires(measured).isPresent()) {
                row.text(
                        read.moved(right),
                        matter.say(
                                "record.set-on.wires", StepFigures.of(finding).overWires(measured)),
                        Style.SMALL);
            }
            cell(row, SIZE.moved(right), sum.value(), counts ? Style.SMALL_BOLD : Style.CELL, counts);
        });
    }

    private void temperature(Taken<Pass.Temperature> taken) {
        Pass.Temperature temperature = taken.what();
        Column ofTemperature = Column.words("", place.left(), read.right() - DEGREES - place.left());
        under(temperature.entry(), List.of());
        rows.add(right -> {
            Row row = row(temperature.entry(), right)
                    .text(
                            ofTemperature.moved(right),
                            matter.say(matter.words().key("record.temperature-of", temperature.of())),
                            Style.CELL);
            cell(row, read.moved(right), temperature.read().toString(), Style.CELL, taken.counts());
            return gone(taken, row, right);
        });
    }

    private void answer(Taken<Pass.Answering> taken) {
        Pass.Answering answering = taken.what();
        under(answering.entry(), with(taken.setting(), line.step()));
        said(
                taken,
                answered,
                matter.words().say(matter.words().key("answered", answering.question()), answering.answer()));
    }

    private void document(Taken<Pass.Giving> taken) {
        under(taken.entry(), List.of());
        said(
                taken,
                ofDocument,
                new DocumentWords(matter.words()).whole(taken.what().document()));
    }

    private void said(Taken<?> taken, Column column, String words) {
        rows.add(right -> {
            Row row = row(taken.entry(), right);
            cell(row, column.moved(right), words, taken.counts() ? Style.SMALL_BOLD : Style.CELL, taken.counts());
            return gone(taken, row, right);
        });
    }

    private static void cell(Row row, Column column, String text, Style style, boolean counts) {
        if (counts) {
            row.text(column, text, style);
        } else {
            row.struck(column, text, style);
        }
    }

    private Row row(Entry entry, double right) {
        return new Row(flow.wrapping())
                .text(ENTRY.moved(right), String.valueOf(entry.seq()), Style.SMALL)
                .text(TIME.moved(right), RecordContext.timeOfDay(entry.at()), Style.SMALL);
    }

    /** Why an entry does not count, under it. */
    private Row gone(Taken<?> taken, Row row, double right) {
        if (!taken.counts()) {
            row.under(
                    below.moved(right),
                    taken.struck()
                            .map(out -> matter.say(
                                    "record.struck-out",
                                    out.reason(),
                                    matter.signed(out.entry().by(), out.entry())))
                            .orElse(matter.say("record.taken-again")),
                    Style.SMALL);
        }
        return row;
    }
}
