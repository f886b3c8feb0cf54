package org.tenthwise.app.export.pdf;

import java.util.Optional;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;

/** The run from its beginning to its end, all but readings and answers, in the order it happened. */
final class CourseSection {

    private static final Column ENTRY = Column.words(PageFlow.LEFT, 38);
    private static final Column WHAT = Column.words(90, 394);
    private static final Column BY = Column.words(494, 100);
    private static final Column WHEN = Column.words(600, PageFlow.RIGHT - 600);

    private final RecordContext matter;
    private final PageFlow flow;

    CourseSection(RecordContext matter, PageFlow flow) {
        this.matter = matter;
        this.flow = flow;
    }

    void add() {
        flow.need(200);
        flow.down(14);
        flow.rule(Strokes.THICK, Role.INK);
        flow.down(5);
        flow.text(matter.say("record.course"), Style.NAME, PageFlow.LEFT, PageFlow.WIDTH);
        flow.down(4);
        head();
        for (Entry entry : matter.sheet().run().entries()) {
            words(entry.event()).ifPresent(words -> new Row(flow.wrapping())
                    .text(ENTRY, String.valueOf(entry.seq()), Style.SMALL)
                    .text(WHAT, words, Style.TEXT)
                    .text(BY, entry.by(), Style.SMALL)
                    .text(WHEN, RecordContext.time(entry.at()), Style.SMALL)
                    .into(flow, this::head));
        }
    }

    private void head() {
        flow.head(ENTRY, matter.say("record.column.entry"));
        flow.head(WHAT, matter.say("record.column.what"));
        flow.head(BY, matter.say("record.column.by"));
        flow.head(WHEN, matter.say("record.column.when"));
        flow.down(Style.SMALL.leading() + 2);
        flow.rule(Strokes.THIN, Role.INK);
    }

    private Optional<String> words(Event event) {
        if (event instanceof Event.Unknown unknown) {
            return Optional.of(matter.say("record.course.unknown", unknown.kind()));
        }
        if (event instanceof Event.TakenOver) {
            return Optional.of(matter.say("record.course.taken-over"));
        }
        if (event instanceof Event.Begun begun) {
            return Optional.of(matter.say("record.course.begun", begun.serial()));
        }
        if (event instanceof Event.PassBegun pass) {
            return Optional.of(matter.say(matter.words().key("record.course.pass", pass.why()), step(pass.step())));
        }
        if (event instanceof Event.MachineKnown known) {
            return Optional.of(matter.say(
                    "record.course.machine",
                    matter.words().say("record.course.machine", known.register()),
                    matter.words().say("record.course.machine", known.usual())));
        }
        if (event instanceof Event.CutOnThese signed) {
            return Optional.of(matter.say("record.course.cut-on-these", step(signed.step()), signed.reason()));
        }
        if (event instanceof Event.DoubtFlagged doubt) {
            return Optional.of(matter.say("record.course.doubt", step(doubt.step()), doubt.words()));
        }
        if (event instanceof Event.NoteMade note) {
            return Optional.of(matter.say("record.course.note", step(note.step()), note.words()));
        }
        if (event instanceof Event.DispositionSigned disposed) {
            return Optional.of((matter.say(
                                    "record.course.disposed",
                                    step(disposed.step()),
                                    matter.words().say("disposition", disposed.disposition()),
                                    Sentences.ended(disposed.reason()),
                                    disposed.signedBy())
                            + " " + matter.sentences().document(disposed))
                    .strip());
        }
        if (event instanceof Event.HandedOver over) {
            return Optional.of(matter.say("record.course.handed-over", over.to()));
        }
        if (event instanceof Event.StruckOut struck) {
            return Optional.of(matter.say("record.course.struck-out", struck.entry(), struck.reason()));
        }
        if (event instanceof Event.Signed signed) {
            return Optional.of(matter.say(
                    "record.course.signed", signed.signedBy(), matter.words().say("signed-as", signed.meaning())));
        }
        return event instanceof Event.Closed closed
                ? Optional.of(matter.say("record.course.closed", closed.signedBy(), closed.meaning()))
                : Optional.empty();
    }

    private String step(int number) {
        return number == 0
                ? matter.say("record.course.whole-run")
                : matter.say(
                        "record.course.step", number, matter.plan().step(number).name());
    }
}
