package org.tenthwise.app.ui.begin;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSummary;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.words.Words;

/** What is asked before a run of a plan begins. Machine and person begin with those of the run last worked on. */
public final class BeginViewModel {

    private static final int MOST = 40;

    private final Plan plan;
    private final Runs shop;
    private final LedgerTasks errands;
    private final Words words;
    private final Navigator journey;
    private final Field<String> serial;
    private final Field<String> lot;
    private final Field<String> machine;
    private final Field<String> person;
    private final FormViewModel form;
    private final ReadOnlyStringWrapper notice = new ReadOnlyStringWrapper("");
    private List<RunSummary> runs = List.of();
    private Optional<String> withOtherText = Optional.empty();

    public BeginViewModel(Plan plan, Runs shop, LedgerTasks errands, Words words, Navigator journey) {
        this.plan = plan;
        this.shop = shop;
        this.errands = errands;
        this.words = words;
        this.journey = journey;
        serial = field("serial", true);
        lot = field("lot", plan.lotAsked());
        machine = field("machine", false);
        person = field("person", true);
        form = new FormViewModel(List.of(serial, lot, machine, person), words, words.say("begin.act"), this::begin);
        serial.valueProperty().subscribe(this::weigh);
    }

    private Field<String> field(String id, boolean required) {
        return Field.words(id, words.say("begin." + id), words.say("begin." + id + ".question"), required, MOST);
    }

    public FormViewModel form() {
        return form;
    }

    public Plan plan() {
        return plan;
    }

    public String part() {
        return words.say("ask.part-revision", plan.part().number(), plan.part().revision());
    }

    /** Size and kind of the plan, a line each. */
    public List<String> facts() {
        long holds =
                plan.steps().stream().filter(step -> !step.hold().isEmpty()).count();
        return List.of(
                words.say("begin.material", plan.material()),
                words.say("begin.plan", plan.issue(), plan.drawing()),
                words.say("home.checks", plan.steps().size(), holds));
    }

    /** Says that the serial is begun already and where it stands; empty where it is not. */
    public ReadOnlyStringProperty noticeProperty() {
        return notice.getReadOnlyProperty();
    }

    public void load() {
        errands.run(() -> new Loaded(shop.runs(), shop.runWithOtherText(plan)), this::loaded);
    }

    private record Loaded(List<RunSummary> runs, Optional<String> withOtherText) {}

    private void loaded(Loaded loaded) {
        List<RunSummary> known = loaded.runs();
        runs = known;
        withOtherText = loaded.withOtherText();
        Suggestions ready = new Suggestions(known);
        offerLots(ready.lots(plan.part()));
        machine.offer(ready.machines());
        person.offer(ready.people());
        known.stream().findFirst().ifPresent(last -> {
            preset(machine, last.sheet().run().begun().machine());
            preset(person, last.sheet().run().by());
        });
        weigh();
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
        notice.set(begunAlready()
                .map(run -> words.say(
                        "begin.already",
                        serial.reads(),
                        run.inHand().number(),
                        run.inHand().name()))
                .orElse(""));
    }

    private Optional<RunSummary> begunAlready() {
        return runs.stream()
                .filter(summary -> {
                    Event.Begun begun = summary.sheet().run().begun();
                    return begun.part().equals(plan.part())
                            && begun.serial().equals(serial.reads())
                            && summary.sheet().run().closed().isEmpty();
                })
                .findFirst();
    }

    private void begin() {
        withOtherText.ifPresentOrElse(
                run -> journey.tell(new Notice(
                        words.say("begin.other-text.title"),
                        words.say(
                                "begin.other-text",
                                run,
                                plan.part().number(),
                                plan.part().revision(),
                                plan.issue()),
                        List.of(
                                new Notice.NoticeKey(words.say("begin.other-text.go-on"), this::beginOrGoOn),
                                new Notice.NoticeKey(words.say("begin.other-text.leave"), () -> {})))),
                this::beginOrGoOn);
    }

    private void beginOrGoOn() {
        begunAlready()
                .ifPresentOrElse(
                        run -> journey.tell(new Notice(
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
        form.busy(true);
        errands.run(() -> shop.begin(beginning), journey::run, () -> form.busy(false));
    }

    private void goOn(RunSummary run) {
        form.busy(true);
        errands.run(() -> shop.open(run.id()), journey::run, () -> form.busy(false));
    }
}
