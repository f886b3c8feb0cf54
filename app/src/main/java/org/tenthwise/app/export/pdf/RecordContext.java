package org.tenthwise.app.export.pdf;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.text.GaugeWords;
import org.tenthwise.app.text.OccasionWords;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.PassStory;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.words.Words;

/** What the sections of a record are written from, and in which words. */
final class RecordContext {

    /** Year first, so that no reader takes the day for the month (ISO 8601). */
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss xxx");

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuu-MM-dd (xxx)");
    private static final DateTimeFormatter TIME_OF_DAY = DateTimeFormatter.ofPattern("HH:mm:ss");

    private final Evidence evidence;
    private final Words words;
    private final Sentences sentences;

    RecordContext(Evidence evidence, Words words) {
        this.evidence = evidence;
        this.words = words;
        this.sentences = new Sentences(words);
    }

    Evidence evidence() {
        return evidence;
    }

    Sheet sheet() {
        return evidence.sheet();
    }

    Plan plan() {
        return evidence.sheet().plan();
    }

    Words words() {
        return words;
    }

    Sentences sentences() {
        return sentences;
    }

    String say(String key, Object... fillings) {
        return words.say(key, fillings);
    }

    /** The part with its revision, as every page names it. */
    String part() {
        return say("record.part-rev", plan().part().number(), plan().part().revision());
    }

    /** What the record is called: one of the first part only where the run is no other. */
    String title() {
        Purpose purpose = sheet().run().begun().occasion().purpose();
        boolean later =
                purpose == Purpose.IN_PROCESS || purpose == Purpose.LAST_PIECE || purpose == Purpose.MEASURED_AGAIN;
        return say(later ? "record.title.later" : "record.title.first");
    }

    /** The same with the part and its serial number, as every page names it. */
    String running() {
        return say("record.running", title(), part(), sheet().run().begun().serial());
    }

    /** A step by its number and name, where a page goes on with it. */
    String named(Step step) {
        return say("record.course.step", step.number(), step.name());
    }

    static String time(OffsetDateTime at) {
        return at.format(TIME);
    }

    /** The day, where the time stands beside it. */
    static String day(OffsetDateTime at) {
        return at.format(DAY);
    }

    static String timeOfDay(OffsetDateTime at) {
        return at.format(TIME_OF_DAY);
    }

    String kind(GaugeKind kind) {
        return GaugeWords.kind(words, kind);
    }

    /** What a step is that is no characteristic; nothing for one that is. */
    String aside(Step step) {
        return step.stepClass() == StepClass.DRAWING ? "" : words.say("record.class", step.stepClass());
    }

    /** What stands in place of a check that the run does not ask. */
    String notInThisRun() {
        return new OccasionWords(words).notHere(sheet().run().begun().occasion());
    }

    /** What was taken in the pass in hand of a step. */
    PassStory story(Line line) {
        List<PassStory> stories = PassStory.of(sheet().run(), line);
        return stories.get(stories.size() - 1);
    }

    /** Who, when, and where in the ledger. */
    String signed(String by, Entry entry) {
        return say("record.signed", by, time(entry.at()), entry.seq());
    }

    /** The last entry of a kind. */
    Optional<Entry> last(Predicate<Event> wanted) {
        List<Entry> entries = sheet().run().entries();
        return entries.stream().filter(entry -> wanted.test(entry.event())).reduce((earlier, later) -> later);
    }
}
