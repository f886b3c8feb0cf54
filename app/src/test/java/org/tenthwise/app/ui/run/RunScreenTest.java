package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.ui.Display;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.app.ui.theme.LookStore.Kept;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;

/** The run screen in its states, on every display. */
class RunScreenTest extends RunAtHand {

    @Test
    void aStepThatAsksHoldsEverywhere() {
        seen("confirm");
    }

    @Test
    void aRunOutBeforeItsFirstReadingHoldsEverywhere() throws Exception {
        run.session.answer(Answer.YES);
        run.session.goTo(ARun.RUN_OUT);
        seen("run-out-open");
    }

    @Test
    void aRunOutThatFailsHoldsEverywhere() throws Exception {
        run.session.answer(Answer.YES);
        run.session.goTo(ARun.RUN_OUT);
        run.enter("0.002", "-0.040", "0.003", "-0.051");
        seen("run-out-by-angle");
        run.enter("0.000");
        seen("run-out-one-by-angle");
        run.session.strikeOut(
                run.session.state().movable().orElseThrow().reading().entry().seq(), "Gauge slipped");
        run.enter("0.000", "-0.011", "-0.028", "-0.038", "-0.038", "-0.026", "-0.011", "-0.001");
        seen("run-out-one-section-by-angle");
        run.enter("0.000", "-0.014", "-0.036", "-0.048", "-0.049", "-0.034", "-0.014", "-0.002");
        seen("run-out-fail");
    }

    /** What is said of readings still to come gives way to how they are taken. */
    @Test
    void withLargeTextHowToReadABoreIsSaidBeforeTheFirstReading() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge();
        run(() -> {
            Window window = window(new Display("large", 1280, 800, new Kept(false, true, false)));
            window.shell().show(screen(window));
            settle(window.scene());
            assertTrue(window.scene().getRoot().lookupAll(".label").stream()
                    .map(Label.class::cast)
                    .anyMatch(label -> label.isVisible() && label.getText().contains(words.say("run.rock"))));
        });
    }

    @Test
    void aDiameterToCutAgainHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE).enter("48.098");
        run.session.again(Why.CUT);
        run.enter("48.032");
        seen("cut-again");
    }

    @Test
    void aCutThatIsOfferedHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(8).session.machine(Register.DIAMETER, Aim.ByLimits.MIDDLE);
        run.enter("48.918");
        seen("cut-offered");
    }

    @Test
    void aDiameterHalfReadWithMetalLeftHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE).enter("48.032");
        seen("cut-half-read");
    }

    @Test
    void theQuestionAboutTheRegisterHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE).enter("48.032", "48.030", "48.031", "48.032");
        seen("register");
    }

    @Test
    void aThirdCutHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE).session.machine(Register.DIAMETER, Aim.ByLimits.THIRD);
        for (String before : List.of("48.310", "48.176")) {
            run.enter(before, before, before, before).session.again(Why.CUT);
        }
        run.enter("48.032", "48.030", "48.031", "48.032");
        seen("third-cut");
    }

    @Test
    void aWallNoEvenCutBringsInHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE).session.machine(Register.RADIUS, Aim.ByLimits.MIDDLE);
        run.enter("48.052", "48.030", "47.991", "48.012");
        seen("uneven");
    }

    @Test
    void theQuestionAboutTheSenseHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.BORE);
        seen("sense");
    }

    @Test
    void theMasterHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.BORE).session.gauge().tellSense(false);
        seen("master");
    }

    @Test
    void theSizeOnTheCertificateHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.BORE).session.gauge().tellSense(false);
        seen("certificate-master");
        turnedRound();
        seen("certificate-wires");
    }

    @Test
    void aThreadCutTooShallowHoldsEverywhere() throws Exception {
        turnedRound();
        run.session.goTo(22);
        run.enter("3.975", "3.978", "3.976", "3.979", "3.975");
        seen("thread-depth-alone");
        run.session.goTo(21);
        run.enter("3.620", "40.776", "40.776", "40.776");
        run.session.goTo(22);
        seen("thread-too-shallow");
    }

    @Test
    void theNotGoEndHoldsEverywhere() throws Exception {
        turnedRound();
        run.session.goTo(24);
        seen("go-asked");
        run.session.answer(Answer.YES);
        seen("not-go-asked");
        run.session.answer(Answer.YES);
        seen("not-go-stays-out");
    }

    @Test
    void theSenseInFiguresHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.BORE).session.gauge().tellSense(true);
        run.enter("30.002", "0.03");
        seen("sense-in-figures");
    }

    @Test
    void theTemperatureOfThePartHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setOnMaster();
        seen("temperature-part");
    }

    @Test
    void theTemperatureOfTheGaugeWithTheOneTakenLastHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("-0.142");
        run.session.again(Why.MEASURED_AGAIN);
        run.enter("22.8");
        seen("temperature-gauge");
    }

    @Test
    void aBoreBroughtToTwentyDegreesHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setOnMaster().enter("22.8", "20.5", "0.015", "0.014", "0.011", "0.013");
        seen("bore-corrected");
    }

    @Test
    void theReadingBeforeAtTwentyDegreesHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setOnMaster().enter("22.8", "20.5", "0.015");
        seen("last-at-twenty-degrees");
    }

    @Test
    void aBoreReadBeforeItsTemperaturesHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setOnMaster();
        run.session.readingsFirst(true);
        run.enter("0.015", "0.014");
        seen("bore-not-corrected-yet");
    }

    @Test
    void aBoreHalfReadHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("0.015", "0.014");
        seen("bore-half-read");
    }

    @Test
    void aBoreThatPassesHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("0.015", "0.014", "0.011", "0.013");
        seen("bore-pass");
    }

    @Test
    void aGaugePastItsDueDayHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge();
        run.session
                .gauge()
                .calibrated(
                        run.session.state().calibrated().get(0).what(),
                        new Calibration("K-2211", Optional.of(LocalDate.parse("2020-03-31"))),
                        false);
        seen("bore-past-due-unread");
        run.enter("0.015", "0.014", "0.011", "0.013");
        seen("bore-past-due");
    }

    @Test
    void aBorePastSizeHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("0.0245", "0.014", "0.011", "0.013");
        seen("bore-fail");
    }

    @Test
    void thePlugsQuestionHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("0.012", "0.012", "0.011", "0.011");
        run.session.goTo(ARun.PLUG);
        run.enter("29.990", "29.990");
        seen("plug-asked");
    }

    @Test
    void aContradictionHoldsEverywhere() throws Exception {
        aPlugThatEnters("30.020");
        seen("plug-contradiction");
    }

    @Test
    void aPlugTriedBeforeItsBoreWasCutAgainHoldsEverywhere() throws Exception {
        aPlugThatEnters("29.990");
        run.session.goTo(ARun.BORE);
        run.session.again(Why.CUT);
        run.enter("20", "20", "0.015", "0.014", "0.011", "0.013");
        run.session.goTo(ARun.PLUG);
        assertTrue(run.session.state().pass().isEmpty());
        seen("plug-before-the-cut");
    }

    @Test
    void aConcessionThatLapsedHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("0.0245", "0.014", "0.011", "0.013");
        run.session.dispose(Disposition.USE_AS_IS, "Key fitted by hand", "Inspector 1", "C-1");
        run.session.strikeOut(
                run.session.state().pass().readings().get(0).entry().seq(), "Misread");
        run.enter("0.0265");
        assertTrue(run.session.state().line().lapsed().isPresent());
        seen("concession-lapsed");
    }

    @Test
    void aThreadOverWiresHoldsEverywhere() throws Exception {
        turnedRound();
        run.enter("3.620");
        seen("thread-wires-set");
        run.enter("40.749", "40.755", "40.752");
        seen("thread");
    }

    @Test
    void aHeldStepHoldsEverywhere() {
        run.session.goTo(ARun.BORE);
        seen("held");
    }

    @Test
    void aClosedRunHoldsEverywhere() throws Exception {
        run.session.close("Inspector 1", SignedAs.NOT_ACCEPTED);
        seen("closed");
    }

    @Test
    void aFigureFarOffWithTheKeyThatKeepsItHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        seen("run", "far-off", this::screen, window -> type(window.scene(), "47990\n"));
    }

    @Test
    void aFigureFarOffThatWasKeptHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE).session.keep("47990");
        seen("far-off-kept");
    }

    @Test
    void aFigureThatIsNoneHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        seen("run", "unfit", this::screen, window -> type(window.scene(), "0.0020.003"));
    }

    @Test
    void aStoppedQueueHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        seen("run", "queue-stopped", this::screen, window -> window.shell()
                .tell(new Notice(
                        words.say("run.untaken"),
                        words.say(
                                "run.untaken.line",
                                words.say("run.untaken.stopped"),
                                "47.990, 47.991, 47.992, 47.993, 47.994"),
                        List.of(new Notice.NoticeKey(words.say("shell.understood"), () -> {})))));
    }

    @Test
    void theRingRoundTheKeyTheFocusIsMovedToHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        seen("run", "focus", this::screen, window -> {
            PseudoClass ring = PseudoClass.getPseudoClass("focus-visible");
            List.of("digit-5", "note", "back")
                    .forEach(id -> window.scene().lookup("#" + id).pseudoClassStateChanged(ring, true));
        });
    }

    /** The bore and its plug passed, the part turned round, the thread in hand. */
    private void turnedRound() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("0.012", "0.012", "0.011", "0.011");
        Workshop.toTheThread(run.session);
    }

    private void aPlugThatEnters(String size) throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("0.012", "0.012", "0.011", "0.011");
        run.session.goTo(ARun.PLUG);
        run.enter(size, size);
        run.session.answer(Answer.FREELY);
    }

    private void seen(String state) {
        seen("run", state, this::screen);
    }
}
