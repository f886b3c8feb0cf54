package org.tenthwise.app.ui.begin;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.NextPart;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.RunSummary;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.text.EarlierWords;
import org.tenthwise.app.text.IssueWords;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Earlier;
import org.tenthwise.model.run.OccasionSaid;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.words.Refused;
import org.tenthwise.model.words.Words;

/**
 * What is asked before a run of a plan begins. Machine and person begin with those of the run last worked on; the
 * serial that follows on the last part of the plan lies ready with the lot of that; of a part that is measured again,
 * its own.
 */
public final class BeginViewModel {

    private static final int MOST = 40;

    private final Plan plan;
    private final Runs shop;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final Field<String> serial;
    private final Field<String> lot;
    private final Field<String> machine;
    private final Field<String> person;
    private final PurposeFields purpose;
    private final FormViewModel form;
    private final ReadOnlyStringWrapper asked = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper notice = new ReadOnlyStringWrapper("");
    private Optional<RunSummary> begunAlready = Optional.empty();
    private String lapsed = "";
    private Optional<String> lotBefore = Optional.empty();
    private Optional<NextPart> next = Optional.empty();
    private Optional<NextPart> ready = Optional.empty();
    private List<RunSummary> measured = List.of();

    /** @param clock tells what comes too soon */
    public BeginViewModel(Plan plan, Runs shop, LedgerTasks tasks, Words words, Navigator navigator, Clock clock) {
        this.plan = plan;
        this.shop = shop;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
        serial = Field.mark("serial", words.say("begin.serial"), words.say("begin.serial.question"), true, MOST);
        lot = Field.mark("lot", words.say("begin.lot"), words.say("begin.lot.question"), plan.lotAsked(), MOST);
        machine = field("machine", false);
        person = field("person", true);
        purpose = new PurposeFields(words);
        form = new FormViewModel(
                Stream.concat(Stream.of(serial, lot, machine, person), purpose.all().stream())
                        .toList(),
                words,
                words.say("begin.act"),
                this::begin);
        serial.valueProperty().subscribe(this::weigh);
        serial.choice()
                .chosenProperty()
                .subscribe(chosen -> chosen.ifPresent(next -> lotBefore.ifPresent(lot.choice()::choose)));
        form.leadsOn(serial, clock);
        purpose.onSaid(this::count);
        purpose.onSaid(this::offerPart);
    }

    private Field<String> field(String id, boolean required) {
        return Field.words(id, words.say("begin." + id), words.say("begin." + id + ".question"), required, MOST);
    }

    public FormViewModel form() {
        return form;
    }

    /** What the run is begun for; its words are long. */
    public Field<Purpose> purpose() {
        return purpose.purpose();
    }

    public Plan plan() {
        return plan;
    }

    public String part() {
        return words.say("ask.part-revision", plan.part().number(), plan.part().revision());
    }

    /** Kind of the plan, why it was issued and what its first article takes in, a line each. */
    public List<String> facts() {
        return Stream.concat(
                        new IssueWords(words).lines(plan).stream(),
                        Stream.of(
                                words.say("begin.material", plan.material()),
                                words.say(
                                        "begin.plan",
                                        plan.issue(),
                                        plan.drawing().title())))
                .toList();
    }

    /** How many checks of the plan are in the run, by what it is for. */
    public ReadOnlyStringProperty askedProperty() {
        return asked.getReadOnlyProperty();
    }

    private void count() {
        OccasionSaid said = purpose.said();
        tasks.run(() -> shop.beginnings().asked(plan, said), numbers -> {
            if (said.equals(purpose.said())) {
                asked.set(counted(numbers));
            }
        });
    }

    private String counted(Optional<Set<Integer>> numbers) {
        int all = plan.steps().size();
        return numbers.map(asks -> words.say(
                        "begin.asked",
                        asks.size(),
                        all,
                        plan.steps().stream()
                                .filter(step -> asks.contains(step.number())
                                        && !step.hold().isEmpty())
                                .count()))
                .orElseGet(() -> words.say("begin.asked.open", all));
    }

    /** Says that the serial is begun already and where it stands; empty where it is not. */
    public ReadOnlyStringProperty noticeProperty() {
        return notice.getReadOnlyProperty();
    }

    public void load() {
        count();
        tasks.run(
                () -> {
                    History history = shop.history();
                    return new Loaded(
                            Suggestions.lots(plan.part(), history),
                            shop.names().machines(),
                            shop.names().people(),
                            history.last(),
                            NextPart.of(plan.part(), history),
                            shop.beginnings().offered(plan, Purpose.FIRST_ARTICLE_PARTIAL),
                            shop.beginnings().offered(plan, Purpose.MEASURED_AGAIN),
                            shop.beginnings().earlier(plan));
                },
                this::loaded);
    }

    private record Loaded(
            List<String> lots,
            List<String> machines,
            List<String> people,
            Optional<RunFacts> last,
            Optional<NextPart> next,
            List<RunSummary> whole,
            List<RunSummary> measured,
            Earlier earlier) {}

    private static List<String> ids(List<RunSummary> runs) {
        return runs.stream().map(RunSummary::id).toList();
    }

    private void loaded(Loaded loaded) {
        offerLots(loaded.lots());
        machine.offer(loaded.machines());
        person.offer(loaded.people());
        loaded.last().ifPresent(last -> {
            preset(machine, last.machine());
            preset(person, last.by());
        });
        next = loaded.next();
        measured = loaded.measured();
        offerPart();
        purpose.offer(ids(loaded.whole()), ids(loaded.measured()));
        lapsed = loaded.earlier().isLapsed(shop.now()) ? new EarlierWords(words).lapsed(loaded.earlier()) : "";
        weigh();
    }

    /** The part that follows; of what is measured again the same part, and none while nobody said of which run. */
    private void offerPart() {
        Optional<NextPart> now = purpose.said().purpose() == Purpose.MEASURED_AGAIN
                ? measured.stream()
                        .filter(run -> run.id().equals(purpose.said().baseline()))
                        .findFirst()
                        .flatMap(run -> NextPart.same(run.run()))
                : next;
        if (now.equals(ready)) {
            return;
        }
        ready = now;
        lotBefore = Optional.empty();
        serial.offer(List.of());
        now.ifPresentOrElse(this::offerNext, () -> serial.type());
    }

    /** Its key says all that a tap on it takes, and that it starts the run where nothing else is missing. */
    private void offerNext(NextPart next) {
        String before = next.lot().orElseGet(() -> words.say("begin.no-lot"));
        lotBefore = Optional.of(before).filter(lot.choice().offeredProperty().get()::contains);
        if (plan.lotAsked() && lotBefore.isEmpty()) {
            return;
        }
        boolean starts = Stream.of(machine, person)
                .allMatch(field -> field.valueProperty().get().isPresent());
        String key = starts ? words.say("begin.next.starts", next.serial()) : next.serial();
        String lotToo = next.lot().map(of -> words.say("begin.next.lot", of)).orElse(before);
        serial.offer(List.of(next.serial()), offered -> lotBefore.isPresent() ? key + "\n" + lotToo : key);
    }

    /** That there is no lot stands behind those known; where none is known, a lot is typed unless that is chosen. */
    private void offerLots(List<String> known) {
        lot.offer(
                plan.lotAsked()
                        ? Stream.concat(known.stream(), Stream.of(words.say("begin.no-lot")))
                                .toList()
                        : known);
        if (known.isEmpty() && lot.valueProperty().get().isEmpty()) {
            lot.type();
        }
    }

    private static void preset(Field<String> field, String value) {
        if (field.valueProperty().get().isEmpty()
                && field.choice().offeredProperty().get().contains(value)) {
            field.choice().choose(value);
        }
    }

    private void weigh() {
        form.aboutProperty().set(words.say("begin.about", serial.reads()));
        String typed = serial.reads();
        begunAlready = Optional.empty();
        notice.set(lapsed);
        if (!typed.isBlank()) {
            tasks.run(() -> begunAlready(typed), found -> {
                if (typed.equals(serial.reads())) {
                    begunAlready = found;
                    notice.set(found.map(run -> already(typed, run)).orElse(lapsed));
                }
            });
        }
    }

    private String already(String typed, RunSummary run) {
        return run.inHand()
                .map(step -> words.say("begin.already", typed, step.number(), step.name()))
                .orElseGet(() -> words.say("begin.already.unread", typed));
    }

    /** The open run of the serial that was last worked on. */
    private Optional<RunSummary> begunAlready(String typed) {
        return shop.history().openOf(plan.part(), typed);
    }

    private void begin() {
        form.busy(true);
        tasks.run(() -> shop.history().withOtherText(plan), this::begin, () -> form.busy(false));
    }

    private void begin(Optional<RunFacts> withOtherText) {
        withOtherText.ifPresentOrElse(
                run -> navigator.tell(new Notice(
                        words.say("begin.other-text.title"),
                        words.say(
                                "begin.other-text",
                                run.id(),
                                plan.part().number(),
                                plan.part().revision(),
                                plan.issue()),
                        List.of(
                                new Notice.NoticeKey(words.say("begin.other-text.go-on"), this::beginOrGoOn),
                                new Notice.NoticeKey(words.say("begin.other-text.leave"), () -> {})))),
                this::beginOrGoOn);
    }

    private void beginOrGoOn() {
        begunAlready.ifPresentOrElse(
                run -> navigator.tell(new Notice(
                        words.say("begin.already.title", serial.reads()),
                        notice.get() + " " + words.say("begin.already.ask"),
                        List.of(
                                new Notice.NoticeKey(words.say("begin.anew"), this::beginAnew),
                                new Notice.NoticeKey(words.say("begin.go-on"), () -> goOn(run))))),
                this::beginAnew);
    }

    private void beginAnew() {
        boolean noLot = plan.lotAsked() && lot.reads().equals(words.say("begin.no-lot"));
        RunHeader beginning =
                new RunHeader(plan, serial.reads(), noLot ? "" : lot.reads(), machine.reads(), person.reads(), noLot);
        OccasionSaid said = purpose.said();
        form.busy(true);
        tasks.run(() -> begun(beginning, said), this::begun, () -> form.busy(false));
    }

    /** Begun, or why it was not. */
    private record Begun(Optional<RunSession> session, Optional<Refused> refused) {}

    private Begun begun(RunHeader beginning, OccasionSaid said) throws CouldNotSave {
        try {
            return new Begun(Optional.of(shop.begin(shop.beginnings().begunFor(beginning, said))), Optional.empty());
        } catch (Refused e) {
            return new Begun(Optional.empty(), Optional.of(e));
        }
    }

    private void begun(Begun begun) {
        begun.session().ifPresent(navigator::run);
        begun.refused().ifPresent(why -> {
            form.busy(false);
            navigator.tell(new Notice(
                    words.say("begin.refused"),
                    words.sentence(words.say(why.why())),
                    List.of(new Notice.NoticeKey(words.say("begin.refused.back"), () -> {}))));
        });
    }

    private void goOn(RunSummary run) {
        form.busy(true);
        tasks.run(() -> shop.open(run.id()), navigator::run, () -> form.busy(false));
    }
}
