package org.tenthwise.app.export.qif;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Calibrated;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.PassStory;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.record.Taken;
import org.tenthwise.model.run.Disposing;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.words.Word;

/** What was found of the items, each with its gauges, its time, its notes and what was read for it. */
final class MeasuredItems {

    private final Sheet sheet;
    private final XmlIds ids;
    private final MeasurementDevices devices;
    private final NotedEvents notes;
    private final QifStatuses statuses;
    private final String component;

    /**
     * @param notes their elements made
     * @param component id of the part that was measured
     */
    MeasuredItems(
            Sheet sheet,
            XmlIds ids,
            MeasurementDevices devices,
            NotedEvents notes,
            QifStatuses statuses,
            String component) {
        this.sheet = sheet;
        this.ids = ids;
        this.devices = devices;
        this.notes = notes;
        this.statuses = statuses;
        this.component = component;
    }

    /**
     * @param alone whether it is the only item of its check: then all that was taken there is for it
     * @param figures absent for a check without limits
     */
    XmlElement of(
            CharacteristicKind kind,
            XmlElement item,
            Line line,
            ItemFound found,
            boolean alone,
            Optional<PlainFigures> figures) {
        List<PassStory> stories = PassStory.of(sheet.run(), line);
        PassStory story = stories.get(stories.size() - 1);
        List<Taken<Pass.Reading>> readings = story.readings().stream()
                .filter(taken -> taken.counts() && (alone || isBehind(taken, found)))
                .toList();
        List<Taken<?>> taken = new ArrayList<>(readings);
        story.answers().stream().filter(Taken::counts).forEach(taken::add);
        story.documents().stream().filter(Taken::counts).forEach(taken::add);
        NamedAttributes facts = readings(readings, story, figures);
        said(story, facts);
        facts.and("repaired", line.repaired() ? "yes" : "");
        facts.and("conceded", line.conceded() ? "yes" : "");
        XmlElement measurement = measurement(kind, facts)
                .add(statuses.of(line, found.standing()))
                .add("CharacteristicItemId", item.id())
                .add(taken.stream()
                        .map(Taken::entry)
                        .reduce((one, other) -> one.seq() > other.seq() ? one : other)
                        .map(Entry::at)
                        .map(at -> XmlElement.text("TimeStamp", NamedFacts.time(at))))
                .add("ActualComponentId", component)
                .addReferences("MeasurementDeviceIds", gauges(taken))
                .addReferences("NotedEventIds", notes.of(line.step().number()))
                .add(nonconformance(line).map(number -> XmlElement.text("NonConformanceDesignator", number)));
        kind.measure(measurement, found);
        return measurement;
    }

    /** Of what nothing answers. */
    XmlElement open(CharacteristicKind kind, XmlElement item) {
        return measurement(kind, new NamedAttributes())
                .add(QifStatuses.open())
                .add("CharacteristicItemId", item.id())
                .add("ActualComponentId", component);
    }

    private XmlElement measurement(CharacteristicKind kind, NamedAttributes facts) {
        return ids.give(new XmlElement(kind.name() + "CharacteristicMeasurement"))
                .add(facts.element());
    }

    private static boolean isBehind(Taken<Pass.Reading> taken, ItemFound found) {
        return found.readings().stream()
                .anyMatch(measured ->
                        measured.reading().entry().seq() == taken.entry().seq());
    }

    private List<String> gauges(List<Taken<?>> taken) {
        Set<String> marks = new LinkedHashSet<>();
        taken.forEach(one -> marks.addAll(devices.of(one)));
        return List.copyOf(marks);
    }

    /** The number under which it is used though it is out, or is repaired; in its place the word of what was signed. */
    private static Optional<String> nonconformance(Line line) {
        boolean passedPlainly = line.finding().verdict().passed() && !line.repaired();
        return line.disposed()
                .or(() -> line.dispositions().stream()
                        .map(Disposing::disposed)
                        .reduce((earlier, later) -> later)
                        .filter(any -> line.repaired()))
                .filter(any -> !passedPlainly)
                .map(disposed -> disposed.document().orElseGet(() -> Word.of(disposed.disposition())));
    }

    private static NamedAttributes readings(
            List<Taken<Pass.Reading>> readings, PassStory story, Optional<PlainFigures> figures) {
        NamedAttributes facts = new NamedAttributes();
        int number = 0;
        for (Taken<Pass.Reading> taken : readings) {
            number++;
            Pass.Reading reading = taken.what();
            NamedFacts said = new NamedFacts()
                    .and("place", story.slot(reading).place().name())
                    .and("typed", reading.typed().toString())
                    .and("size", story.measured(reading).flatMap(measured -> size(measured, figures)))
                    .and("verdict", story.standing(reading).map(Word::of));
            taken.setting().ifPresent(setting -> said.and(set(setting)));
            taken.calibrated().filter(Calibrated::isPast).ifPresent(any -> said.and("past-due", "yes"));
            facts.and("reading-" + number, said.and(taken.entry()).text());
        }
        return facts;
    }

    /** Nothing where it is the figure as typed. */
    private static Optional<String> size(Measured measured, Optional<PlainFigures> figures) {
        return figures.filter(of -> !measured.isAsRead()).flatMap(of -> of.said(measured));
    }

    private static NamedFacts set(Setting setting) {
        return new NamedFacts()
                .and("gauge", setting.gauge().id())
                .and("set-on", setting.reference())
                .and("certified", setting.certified().map(Written::toString))
                .and("zero", setting.zero().map(Written::toString));
    }

    private static void said(PassStory story, NamedAttributes facts) {
        story.answers().stream()
                .filter(Taken::counts)
                .forEach(taken -> facts.and(
                        Word.of(taken.what().question()),
                        new NamedFacts(Word.of(taken.what().answer()))
                                .and("gauge", taken.setting().map(setting -> setting.gauge()
                                        .id()))
                                .and(taken.entry())
                                .text()));
        story.temperatures().stream()
                .filter(Taken::counts)
                .forEach(taken -> facts.and(
                        "temperature-" + Word.of(taken.what().of()),
                        new NamedFacts(taken.what().read().toString())
                                .and(taken.entry())
                                .text()));
        story.documents().stream()
                .filter(Taken::counts)
                .forEach(taken -> facts.and(
                        "document",
                        DocumentFacts.of(taken.what().document())
                                .and(taken.entry())
                                .text()));
    }
}
