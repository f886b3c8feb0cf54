package org.tenthwise.app.demo;

import java.io.IOException;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Consumer;
import org.tenthwise.app.ui.sign.SignViewModel;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ImportEvent;
import org.tenthwise.model.run.MatterSettled;
import org.tenthwise.model.run.ReportEvent;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Word;
import org.tenthwise.model.words.Words;

/**
 * What is pressed on the screens of a run for each kind of event, from the first step to the last signature; nothing
 * for those that follow by themselves or that no demo has.
 */
final class Presses implements Event.Cases<Presses.Press> {

    /** What is pressed for an event. */
    interface Press {
        void be() throws IOException;
    }

    private final KeyPresser finger;
    private final Typist typist;
    private final Camera camera;
    private final Words words;
    private final Plan plan;
    private final ReadingsFile sample;
    private final Consumer<String> along;
    private final Set<String> looked = new HashSet<>();
    private final Set<Setting> made = new HashSet<>();
    private int step;

    /** @param along is told each step as the walk comes to it */
    Presses(
            KeyPresser finger,
            Typist typist,
            Camera camera,
            Words words,
            Plan plan,
            ReadingsFile sample,
            Consumer<String> along) {
        this.finger = finger;
        this.typist = typist;
        this.camera = camera;
        this.words = words;
        this.plan = plan;
        this.sample = sample;
        this.along = along;
        this.step = plan.steps().get(0).number();
    }

    /** Presses what the event was. */
    void play(Event event) throws IOException {
        event.match(this).be();
    }

    @Override
    public Press begun(Event.Begun event) {
        return () -> {};
    }

    @Override
    public Press gaugeKnown(ShopEvent.GaugeKnown event) {
        return () -> {};
    }

    @Override
    public Press calibrationKnown(ShopEvent.CalibrationKnown event) {
        return () -> {};
    }

    @Override
    public Press machineKnown(ShopEvent.MachineKnown event) {
        return () -> {};
    }

    @Override
    public Press cutOnThese(StepEvent.CutOnThese event) {
        return () -> {};
    }

    @Override
    public Press gaugeChosen(StepEvent.GaugeChosen event) {
        return () -> {};
    }

    @Override
    public Press gaugeSet(StepEvent.GaugeSet event) {
        return () -> {
            goTo(event.step());
            set(event.setting());
        };
    }

    @Override
    public Press readingTaken(StepEvent.ReadingTaken event) {
        return () -> {
            goTo(event.step());
            typist.figure(event.typed().text());
            camera.once("run-figure-typed");
            finger.press("commit");
        };
    }

    @Override
    public Press temperatureTaken(StepEvent.TemperatureTaken event) {
        return () -> {
            goTo(event.step());
            typist.figure(event.read().text());
            camera.once("run-temperature-" + Word.of(event.of()));
            finger.press("commit");
        };
    }

    @Override
    public Press struckOut(Event.StruckOut event) {
        return () -> {};
    }

    @Override
    public Press answered(StepEvent.Answered event) {
        return () -> {
            goTo(event.step());
            camera.once("run-question-" + check().key());
            finger.press("reply-" + event.question().answers().indexOf(event.answer()));
        };
    }

    @Override
    public Press documentGiven(StepEvent.DocumentGiven event) {
        return () -> {};
    }

    @Override
    public Press passBegun(StepEvent.PassBegun event) {
        return () -> passBegun(event.why());
    }

    @Override
    public Press doubtFlagged(StepEvent.DoubtFlagged event) {
        return () -> {};
    }

    @Override
    public Press noteMade(StepEvent.NoteMade event) {
        return () -> {
            finger.press("note");
            camera.take("note");
            typist.answer(event.words());
        };
    }

    @Override
    public Press dispositionSigned(StepEvent.DispositionSigned event) {
        return () -> {};
    }

    @Override
    public Press handedOver(Event.HandedOver event) {
        return () -> {};
    }

    @Override
    public Press signed(Event.Signed event) {
        return () -> sign(event.signedBy(), event.meaning(), SignViewModel.End.LEAVE_OPEN);
    }

    @Override
    public Press closed(Event.Closed event) {
        return () -> sign(event.signedBy(), event.as(), SignViewModel.End.CLOSE);
    }

    @Override
    public Press putAway(Event.PutAway event) {
        return () -> {};
    }

    @Override
    public Press takenUp(Event.TakenUp event) {
        return () -> {};
    }

    @Override
    public Press takenOver(Event.TakenOver event) {
        return () -> {};
    }

    @Override
    public Press reportDrawnUp(ReportEvent.ReportDrawnUp event) {
        return () -> {};
    }

    @Override
    public Press reportSigned(ReportEvent.ReportSigned event) {
        return () -> {};
    }

    @Override
    public Press matterSettled(MatterSettled event) {
        return () -> {};
    }

    @Override
    public Press sealed(Event.Sealed event) {
        return () -> {};
    }

    @Override
    public Press imported(ImportEvent.Imported event) {
        return () -> {};
    }

    @Override
    public Press importLost(ImportEvent.Lost event) {
        return () -> {};
    }

    @Override
    public Press unknown(Event.Unknown event) {
        return () -> {};
    }

    /** A gauge the plan names is taken as it is; what it is set on is typed once, and lies ready then. */
    private void set(Setting setting) throws IOException {
        if (!made.add(setting) && setting.certified().isPresent()) {
            camera.once("gauge-lies-ready");
            finger.press("reply-0");
            return;
        }
        if (setting.gauge().sense().isPresent() && finger.sees("reply-0")) {
            camera.once("gauge-sense");
            boolean rises =
                    setting.gauge().kind().told(true) == setting.gauge().sense().get();
            finger.press(rises ? "reply-0" : "reply-1");
        }
        if (setting.certified().isPresent()) {
            typist.figure(setting.certified().get().text());
            camera.once("gauge-" + setting.gauge().kind().key());
            finger.press("commit");
        }
        if (setting.zero().isPresent()) {
            typist.figure(setting.zero().get().text());
            finger.press("commit");
            if (finger.sees("reply-0")) {
                camera.once("gauge-sense-in-figures");
                finger.press("reply-0");
            }
        }
    }

    private void passBegun(StepEvent.PassBegun.Why why) throws IOException {
        if (finger.sees("reply-0")) {
            camera.once("run-register");
            finger.press("reply-" + register().ordinal());
        }
        camera.once("run-" + check().key() + "-out");
        if (finger.sees("sign-for") && looked.add("sign-for")) {
            camera.aside("sign-for", "sign-for");
        }
        if (why == StepEvent.PassBegun.Why.MEASURED_AGAIN) {
            finger.press("again");
        } else {
            commit();
        }
    }

    private Register register() {
        return sample.events().stream()
                .flatMap(event -> event.as(ShopEvent.MachineKnown.class).stream())
                .map(ShopEvent.MachineKnown::register)
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

    /** Tells the step the walk has come to. */
    void sayWhere() {
        Step at = plan.step(step);
        along.accept(
                words.say("demo.at", plan.steps().indexOf(at) + 1, plan.steps().size(), at.name()));
    }

    /** A last look at a step that is done, the first of its kind, and at what lies beside it. */
    private void leave() throws IOException {
        camera.once("run-" + check().key());
        if (check().asSize().isPresent() && looked.add("aside")) {
            camera.aside("strike", "strike-out");
            camera.aside("gauge", "gauge-card");
            camera.aside("doubt", "doubt");
        }
    }

    private void sign(String by, SignedAs as, SignViewModel.End end) throws IOException {
        if (finger.sees("sign")) {
            finger.press("sign");
        } else {
            leave();
            commit();
        }
        camera.once("sign");
        typist.answer(by);
        finger.press("choice-" + SignViewModel.MEANINGS.indexOf(as));
        finger.press("choice-" + end.ordinal());
    }

    private void commit() {
        finger.pressEither("commit-answered", "commit");
    }

    private Check check() {
        return plan.step(step).check();
    }
}
