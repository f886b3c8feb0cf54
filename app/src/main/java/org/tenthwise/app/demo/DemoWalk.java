package org.tenthwise.app.demo;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.scene.Scene;
import org.tenthwise.app.ui.sign.SignViewModel;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Word;
import org.tenthwise.model.words.Words;

/**
 * Walks a part from the first screen to the last: begins a run, takes every reading and answer of a readings file,
 * looks into the screens that lie beside the way, signs, and hands the record out.
 */
public final class DemoWalk {

    private final KeyPresser finger;
    private final Typist typist;
    private final Camera camera;
    private final Words words;
    private final Plan plan;
    private final ReadingsFile sample;
    private final Consumer<String> along;
    private final String begin;
    private final Set<String> seen = new HashSet<>();
    private int step;

    /**
     * @param night whether the screens are dark
     * @param rest returns when the thread of the ledger and the screen have done what they were given
     * @param pictures folder that is there
     * @param along is told each step as the walk comes to it
     */
    public DemoWalk(
            Scene scene,
            BooleanProperty night,
            Runnable rest,
            Words words,
            Plan plan,
            ReadingsFile sample,
            Path pictures,
            Consumer<String> along) {
        this.finger = new KeyPresser(scene, rest);
        this.typist = new Typist(finger, words);
        this.camera = new Camera(scene, night, finger, pictures);
        this.words = words;
        this.plan = plan;
        this.sample = sample;
        this.along = along;
        this.begin = "begin-%s-%s".formatted(plan.part().number(), plan.part().revision());
        this.step = plan.steps().get(0).number();
    }

    /** @return the pictures taken */
    public List<Path> walk() throws IOException {
        finger.await(begin);
        camera.take("parts");
        aside("about", "about");
        beginRun();
        sayWhere();
        for (Event event : sample.events()) {
            event.match(new Deeds()).be();
        }
        record();
        return camera.taken();
    }

    private void beginRun() throws IOException {
        finger.press(begin);
        camera.take("begin");
        typist.answer(sample.begun().serial());
        typist.answer(sample.begun().lot());
        typist.answer(sample.begun().machine());
        typist.answer(sample.by());
        camera.take("run-first-step");
    }

    /** What is pressed for an event. */
    private interface Deed {
        void be() throws IOException;
    }

    /** A gauge the plan names is taken as it is; what it is set on is typed. */
    private void set(Setting setting) throws IOException {
        if (setting.gauge().sense().isPresent() && finger.sees("reply-0")) {
            once("gauge-sense");
            boolean risesPressedIn = setting.gauge().sense().get() == ReadingDirection.FALLS_WITH_SIZE;
            finger.press(risesPressedIn ? "reply-0" : "reply-1");
        }
        if (setting.certified().isPresent()) {
            typist.figure(setting.certified().get().text());
            once("gauge-" + setting.gauge().kind().key());
            finger.press("commit");
        }
        if (setting.zero().isPresent()) {
            typist.figure(setting.zero().get().text());
            finger.press("commit");
            if (finger.sees("reply-0")) {
                once("gauge-sense-in-figures");
                finger.press("reply-0");
            }
        }
    }

    private void passBegun(StepEvent.PassBegun.Why why) throws IOException {
        if (finger.sees("reply-0")) {
            once("run-register");
            finger.press("reply-" + register().ordinal());
        }
        once("run-" + check().key() + "-out");
        if (finger.sees("sign-for") && seen.add("sign-for")) {
            aside("sign-for", "sign-for");
        }
        if (why == StepEvent.PassBegun.Why.MEASURED_AGAIN) {
            finger.press("again");
        } else {
            commit();
        }
    }

    private Register register() {
        return sample.events().stream()
                .flatMap(event -> event.as(Event.MachineKnown.class).stream())
                .map(Event.MachineKnown::register)
                .findFirst()
                .orElse(Register.DIAMETER);
    }

    private void goTo(int next) throws IOException {
        if (next != step) {
            boolean leftByItsAnswer = !finger.reads("step-number").equals(Integer.toString(step));
            if (!leftByItsAnswer) {
                leave();
                commit();
            }
            step = next;
            sayWhere();
        }
    }

    private void sayWhere() {
        Step at = plan.step(step);
        along.accept(
                words.say("demo.at", plan.steps().indexOf(at) + 1, plan.steps().size(), at.name()));
    }

    /** A last look at a step that is done, the first of its kind, and at what lies beside it. */
    private void leave() throws IOException {
        once("run-" + check().key());
        if (check().asSize().isPresent() && seen.add("aside")) {
            aside("strike", "strike-out");
            aside("gauge", "gauge-card");
            aside("doubt", "doubt");
        }
    }

    private void sign(String by, SignedAs as, SignViewModel.End end) throws IOException {
        if (finger.sees("sign")) {
            finger.press("sign");
        } else {
            leave();
            commit();
        }
        once("sign");
        typist.answer(by);
        choose(SignViewModel.MEANINGS.indexOf(as));
        choose(end.ordinal());
    }

    private void record() throws IOException {
        camera.take("record");
        for (String as : List.of("hand-pdf", "hand-csv", "hand-json")) {
            finger.press(as);
            once("record-handed-out");
            finger.pressSpoken(words.say("shell.understood"));
        }
        finger.press("back");
        camera.take("parts-and-a-run");
    }

    private void aside(String key, String name) throws IOException {
        finger.press(key);
        camera.take(name);
        finger.press("back");
    }

    private void once(String name) throws IOException {
        if (seen.add(name)) {
            finger.rest();
            camera.take(name);
        }
    }

    private void choose(int offered) {
        finger.press("choice-" + offered);
        finger.press("commit");
    }

    private void commit() {
        finger.pressEither("commit-answered", "commit");
    }

    private Check check() {
        return plan.step(step).check();
    }

    /** What is pressed for each kind of event; nothing for those that follow by themselves or that no demo has. */
    private final class Deeds implements Event.Cases<Deed> {

        @Override
        public Deed begun(Event.Begun event) {
            return () -> {};
        }

        @Override
        public Deed gaugeKnown(Event.GaugeKnown event) {
            return () -> {};
        }

        @Override
        public Deed machineKnown(Event.MachineKnown event) {
            return () -> {};
        }

        @Override
        public Deed cutOnThese(StepEvent.CutOnThese event) {
            return () -> {};
        }

        @Override
        public Deed gaugeChosen(StepEvent.GaugeChosen event) {
            return () -> {};
        }

        @Override
        public Deed gaugeSet(StepEvent.GaugeSet event) {
            return () -> {
                goTo(event.step());
                set(event.setting());
            };
        }

        @Override
        public Deed readingTaken(StepEvent.ReadingTaken event) {
            return () -> {
                goTo(event.step());
                typist.figure(event.typed().text());
                once("run-figure-typed");
                finger.press("commit");
            };
        }

        @Override
        public Deed temperatureTaken(StepEvent.TemperatureTaken event) {
            return () -> {
                goTo(event.step());
                typist.figure(event.read().text());
                once("run-temperature-" + Word.of(event.of()));
                finger.press("commit");
            };
        }

        @Override
        public Deed struckOut(Event.StruckOut event) {
            return () -> {};
        }

        @Override
        public Deed answered(StepEvent.Answered event) {
            return () -> {
                goTo(event.step());
                once("run-question-" + check().key());
                finger.press("reply-" + event.question().answers().indexOf(event.answer()));
            };
        }

        @Override
        public Deed passBegun(StepEvent.PassBegun event) {
            return () -> DemoWalk.this.passBegun(event.why());
        }

        @Override
        public Deed doubtFlagged(StepEvent.DoubtFlagged event) {
            return () -> {};
        }

        @Override
        public Deed noteMade(StepEvent.NoteMade event) {
            return () -> {
                finger.press("note");
                camera.take("note");
                typist.answer(event.words());
            };
        }

        @Override
        public Deed dispositionSigned(StepEvent.DispositionSigned event) {
            return () -> {};
        }

        @Override
        public Deed handedOver(Event.HandedOver event) {
            return () -> {};
        }

        @Override
        public Deed signed(Event.Signed event) {
            return () -> sign(event.signedBy(), event.meaning(), SignViewModel.End.LEAVE_OPEN);
        }

        @Override
        public Deed closed(Event.Closed event) {
            return () -> sign(event.signedBy(), event.as(), SignViewModel.End.CLOSE);
        }

        @Override
        public Deed putAway(Event.PutAway event) {
            return () -> {};
        }

        @Override
        public Deed takenUp(Event.TakenUp event) {
            return () -> {};
        }

        @Override
        public Deed takenOver(Event.TakenOver event) {
            return () -> {};
        }

        @Override
        public Deed unknown(Event.Unknown event) {
            return () -> {};
        }
    }
}
