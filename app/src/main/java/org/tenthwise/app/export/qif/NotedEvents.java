package org.tenthwise.app.export.qif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.PassStory;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.record.Taken;
import org.tenthwise.model.run.Disposing;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.Remark;
import org.tenthwise.model.run.Signature;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Word;

/**
 * What happened in the run besides its results: readings that were struck out, were taken again or are of the size
 * before a cut, doubts and notes, what was signed, and what came of the checks that are no characteristics.
 */
final class NotedEvents {

    /** @param at absent for a check at which nothing happened; such stand at the end */
    private record Note(int step, Optional<Entry> at, String text) {}

    private static final int WHOLE_RUN = 0;

    private final Sheet sheet;
    private final List<Note> notes = new ArrayList<>();
    private final Map<Integer, List<String>> ids = new HashMap<>();

    private NotedEvents(Sheet sheet) {
        this.sheet = sheet;
        sheet.lines().forEach(this::ofSteps);
        settings();
        sheet.run().remarks().forEach(this::remark);
        sheet.run().signatures().forEach(this::signature);
        sheet.run().entries().forEach(this::ofTheRun);
        notes.sort(Comparator.comparingLong(note -> note.at().map(Entry::seq).orElse(Long.MAX_VALUE)));
    }

    static NotedEvents of(Sheet sheet) {
        return new NotedEvents(sheet);
    }

    /** Ids of the notes that belong to a step, once {@link #elements} were made. */
    List<String> of(int step) {
        return ids.getOrDefault(step, List.of());
    }

    /** In the order they happened, numbered by it. */
    List<XmlElement> elements(XmlIds row) {
        List<XmlElement> elements = new ArrayList<>();
        for (Note note : notes) {
            XmlElement element = row.give(new XmlElement("NotedEvent"))
                    .add("Description", note.text())
                    .add("SequenceNumber", String.valueOf(elements.size() + 1))
                    .add(note.at().map(entry -> XmlElement.text("TimeOccurred", NamedFacts.time(entry.at()))));
            ids.computeIfAbsent(note.step(), first -> new ArrayList<>()).add(element.id());
            elements.add(element);
        }
        return elements;
    }

    private void note(int step, Entry at, NamedFacts facts) {
        notes.add(new Note(step, Optional.of(at), facts.text()));
    }

    private void ofSteps(Line line) {
        for (PassStory story : PassStory.of(sheet.run(), line)) {
            taken(line, story, story.readings(), reading -> new NamedFacts()
                    .and("place", story.slot(reading).place().name())
                    .and("reading", reading.typed().toString()));
            taken(line, story, story.temperatures(), temperature -> new NamedFacts()
                    .and(Word.of(temperature.of()), temperature.read().toString()));
            taken(line, story, story.answers(), answering -> new NamedFacts()
                    .and(Word.of(answering.question()), Word.of(answering.answer())));
            taken(line, story, story.documents(), giving -> DocumentFacts.of(giving.document()));
        }
        line.dispositions().forEach(signed -> disposing(line, signed));
        if (!DrawnRequirements.isOfDrawing(line)) {
            apart(line);
        }
    }

    /** What does not count, and all that is of an earlier pass. */
    private <T> void taken(Line line, PassStory story, List<Taken<T>> all, Function<T, NamedFacts> said) {
        boolean earlier = story.pass().ended().isPresent();
        for (Taken<T> taken : all) {
            if (earlier || !taken.counts()) {
                String what = taken.struck().isPresent() ? "struck-out" : earlier ? "earlier-pass" : "taken-again";
                NamedFacts facts = new NamedFacts(what)
                        .and("step", String.valueOf(line.step().number()))
                        .and("pass", String.valueOf(story.pass().number()))
                        .and(said.apply(taken.what()))
                        .and(taken.entry());
                taken.struck().ifPresent(struck -> struck(facts, struck));
                story.pass().ended().ifPresent(ended -> facts.and("ended-for", Word.of(ended.why())));
                note(line.step().number(), taken.entry(), facts);
            }
        }
    }

    private static void struck(NamedFacts facts, Pass.Struck struck) {
        facts.and("reason", struck.reason())
                .and("struck-out-by", struck.entry().by())
                .and("struck-out-at", NamedFacts.time(struck.entry().at()));
    }

    private void disposing(Line line, Disposing signed) {
        StepEvent.DispositionSigned disposed = signed.disposed();
        note(
                line.step().number(),
                signed.entry(),
                new NamedFacts("disposition")
                        .and("step", String.valueOf(line.step().number()))
                        .and("disposition", Word.of(disposed.disposition()))
                        .and("reason", disposed.reason())
                        .and("signed-by", disposed.signedBy())
                        .and("number", disposed.document())
                        .and(
                                "lapsed-with-entry",
                                signed.lapsed().map(Entry::seq).map(String::valueOf))
                        .and(signed.entry()));
    }

    /** What came of a check that is no characteristic of the drawing. */
    private void apart(Line line) {
        Optional<Entry> last = sheet.run().entries().stream()
                .filter(entry -> sheet.run()
                        .step(entry)
                        .filter(step -> step == line.step().number())
                        .isPresent())
                .reduce((before, after) -> after);
        NamedFacts facts = new NamedFacts(Word.of(line.step().stepClass()))
                .and("step", String.valueOf(line.step().number()))
                .and("check", line.step().check().key())
                .and("name", line.step().name())
                .and("verdict", line.asked() ? Word.of(line.finding().verdict().standing()) : "not-in-this-run")
                .and("value", value(line))
                .and("carried-on", line.carriedOn() ? "yes" : "");
        line.pass().giving().map(Pass.Giving::document).map(DocumentFacts::of).ifPresent(facts::and);
        notes.add(new Note(line.step().number(), last, facts.text()));
    }

    private Optional<String> value(Line line) {
        return line.step()
                .limits()
                .filter(limits -> line.finding().verdict().standing() != VerdictKind.OPEN)
                .flatMap(limits -> line.finding().value().map(value -> new PlainFigures(
                                new FileUnits(sheet.plan().unit()), limits)
                        .said(value, limits.places())));
    }

    private void settings() {
        sheet.run().gauges().settingsStruck().forEach((entry, gone) -> {
            StepEvent.GaugeSet set = StepEvent.GaugeSet.in(entry);
            NamedFacts facts = new NamedFacts("struck-out")
                    .and("step", String.valueOf(set.step()))
                    .and("gauge-set", set.setting().gauge().id())
                    .and(entry);
            struck(facts, gone);
            note(set.step(), entry, facts);
        });
    }

    private void remark(Remark remark) {
        note(
                remark.step(),
                remark.entry(),
                new NamedFacts(Word.of(remark.kind()))
                        .and("step", remark.step() == WHOLE_RUN ? "" : String.valueOf(remark.step()))
                        .and("words", remark.words())
                        .and(remark.entry()));
    }

    private void signature(Signature signature) {
        note(
                WHOLE_RUN,
                signature.entry(),
                new NamedFacts("signed")
                        .and("meaning", signature.words())
                        .and("signed-by", signature.signedBy())
                        .and("closes", signature.closed() ? "yes" : "no")
                        .and("lapsed", signature.lapse().map(Word::of))
                        .and(signature.entry()));
    }

    private void ofTheRun(Entry entry) {
        Event event = entry.event();
        event.as(Event.HandedOver.class)
                .ifPresent(over -> note(
                        WHOLE_RUN,
                        entry,
                        new NamedFacts("handed-over").and("to", over.to()).and(entry)));
        event.as(Event.PutAway.class)
                .ifPresent(away -> note(
                        WHOLE_RUN,
                        entry,
                        new NamedFacts("put-away")
                                .and("reason", away.reason())
                                .and("put-away-by", away.putAwayBy())
                                .and(entry)));
        event.as(Event.TakenUp.class).ifPresent(up -> note(WHOLE_RUN, entry, new NamedFacts("taken-up").and(entry)));
        event.as(Event.Unknown.class)
                .ifPresent(unknown -> note(
                        WHOLE_RUN,
                        entry,
                        new NamedFacts("unknown").and("kind", unknown.kind()).and(entry)));
    }
}
