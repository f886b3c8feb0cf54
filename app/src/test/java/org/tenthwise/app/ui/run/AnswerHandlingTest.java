package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Scene;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.session.Prompt;
import org.tenthwise.app.ui.Display;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.verdict.VerdictKind;

/** Answers, temperatures and passes on the run screen, and where what is found leads. */
class AnswerHandlingTest extends RunAtHand {

    @Test
    void theSenseMasterAndZeroOfABoreGaugeAreTwoAnswersAFigureAndATap() throws Exception {
        run.setUpAndGoTo(ARun.BORE);
        run(() -> {
            Scene scene = opened().scene();
            press(scene, "reply-1");
            assertTrue(scene.lookup("#commit").isDisabled());
            type(scene, "30.001\n");
            press(scene, "commit");
            press(scene, "reply-0");
        });
        assertTrue(run.session.state().asked() instanceof Prompt.Temperature);
    }

    @Test
    void theTemperaturesCanWaitUntilEverythingIsRead() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setOnMaster();
        run(() -> {
            Scene scene = opened().scene();
            press(scene, "again");
            type(scene, "0.015\n0.014\n0.011\n0.013\n");
        });
        assertEquals(4, run.session.state().pass().readings().size());
        assertTrue(run.session.state().asked() instanceof Prompt.Temperature);
        assertEquals(
                VerdictKind.OPEN, run.session.state().line().finding().verdict().standing());
    }

    @Test
    void theTemperaturesTakenLastAreTakenAgainByTwoTaps() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("-0.142");
        run.session.again(Why.MEASURED_AGAIN);
        run(() -> {
            Scene scene = opened().scene();
            press(scene, "commit");
            press(scene, "commit");
        });
        assertEquals(
                List.of("20 °C", "20 °C"),
                run.session.state().pass().temperatures().stream()
                        .map(taken -> taken.read().toString())
                        .toList());
        assertTrue(run.session.state().asked() instanceof Prompt.Reading);
    }

    /** The reading and the size at 20 °C are two figures, so nothing stands between them that says they are one. */
    @Test
    void theReadingBeforeIsToldAsReadAndAtTwentyDegrees() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setOnMaster().enter("30", "20", "0.015");
        // 30.015 / (1 + 16.2e-6 · 10) = 30.0101, by hand
        run(() -> assertEquals("Last: 0.015, at 20 °C 30.010", text(opened().scene(), "comes-to")));
    }

    /** What does not fit below the figure is not shown at all. */
    @Test
    void bothFiguresOfTheReadingBeforeFitInLargePrint() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setOnMaster().enter("22.8", "20.5", "0.015");
        run(() -> {
            Window window = window(Display.LARGE);
            window.shell().show(screen(window));
            settle(window.scene());
            assertTrue(window.scene().lookup("#comes-to").isVisible());
        });
    }

    @Test
    void atTwentyDegreesTheFigureOfTheDialIsTheSize() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("0.015");
        run(() -> assertEquals("Last: 0.015 = 30.015", text(opened().scene(), "comes-to")));
    }

    @Test
    void whyATemperatureIsNoneIsAWholeSentence() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setOnMaster();
        run(() -> type(opened().scene(), "48151\n"));
        assertEquals(
                List.of("48151 °C is not a temperature at which a size is measured."),
                ways.told.stream().map(Notice::words).toList());
    }

    @Test
    void aGaugeThatTypesIntoTheTemperatureIsNotTakenForAThermometer() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setOnMaster();
        run(() -> type(opened().scene(), "+0.013\n+0.013\n"));
        assertTrue(run.session.state().pass().isEmpty());
    }

    @Test
    void theSecondTapOnAnAnswerTypesNoFigure() throws Exception {
        run.setUpAndGoTo(ARun.BORE);
        run(() -> {
            Scene scene = opened().scene();
            press(scene, "reply-1");
            assertTrue(run.session.state().asked() instanceof Prompt.Certified);
            assertTrue(Stream.<Node>iterate(scene.lookup("#digit-0"), Objects::nonNull, Node::getParent)
                    .anyMatch(Node::isMouseTransparent));
        });
    }

    @Test
    void cutTakenBeginsANewPassAndKeepsTheOld() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        for (String read : List.of("48.032", "48.030", "48.031", "48.032")) {
            run.session.enter(read);
        }
        run(() -> {
            Scene scene = opened().scene();
            press(scene, "reply-1");
            press(scene, "commit");
        });
        assertEquals(
                Optional.of(Register.RADIUS), run.session.state().sheet().run().register());
        assertTrue(run.session.state().pass().isEmpty());
        assertEquals(1, run.session.state().line().earlier().size());
    }

    @Test
    void aRunOutCanBeReadAsHighestAndLowest() throws Exception {
        run.session.answer(Answer.YES);
        run.session.goTo(ARun.RUN_OUT);
        run(() -> {
            Scene scene = opened().scene();
            type(scene, "0.015\n0.003\n0.012\n0.001\n");
        });
        assertEquals(
                VerdictKind.PASS,
                run.session
                        .state()
                        .sheet()
                        .line(ARun.RUN_OUT)
                        .finding()
                        .verdict()
                        .standing());
    }

    @Test
    void aFirstReadingByAngleCanBePutElsewhereByTheKeyThatLedToTheOtherWay() throws Exception {
        run.session.answer(Answer.YES);
        run.session.goTo(ARun.RUN_OUT);
        run(() -> {
            Scene scene = opened().scene();
            type(scene, "0.040\n0.000\n0.050\n0.000\n0.033\n");
            press(scene, "again");
        });
        assertTrue(ways.asked.contains("form STOOD_ELSEWHERE " + run.session.id()), ways.asked.toString());
        assertEquals(5, run.session.state().pass().standing().size());
    }

    /** Nobody cuts by a run that takes nothing any more. */
    @Test
    void aClosedRunNamesNoCut() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE).enter("48.032", "48.030", "48.031", "48.032");
        assertFalse(next().isEmpty());
        run.session.close("Inspector 1", SignedAs.NOT_ACCEPTED);
        assertEquals("", next());
    }

    @Test
    void aClosedRunTellsWhatWasSignedFor() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE).enter("47.900");
        run.session.dispose(Disposition.SCRAP, "Past size", "Inspector 1", "N-1");
        run.session.close("Inspector 1", SignedAs.NOT_ACCEPTED);
        assertEquals("Disposition: scrap, Inspector 1.", next());
    }

    /** What one gauge reads off the other would be cut off the work as well. */
    @Test
    void readingsOfTwoGaugesAreToldBeforeACut() throws Exception {
        String said = "Read with more than one gauge (MC-3, MC-9): before a cut, read every place with the same one.";
        run.setUpAndGoTo(ARun.OUTSIDE).enter("48.032");
        assertFalse(inSight().contains(said));
        run.session.gauge().choose("MC-9");
        run.enter("48.030", "48.031", "48.032");
        assertEquals(said, inSight().get(0));
    }

    private List<String> inSight() {
        return new RunPresenter(words).of(run.session.state()).found().shown();
    }

    private String next() {
        return new RunPresenter(words).of(run.session.state()).found().next();
    }

    @Test
    void aPlugThatWaitsForItsBoreLeadsThere() throws Exception {
        run.setUpAndGoTo(ARun.PLUG).enter("29.990", "29.990");
        run.session.answer(Answer.FREELY);
        RunScreenState.Commit commit =
                new RunPresenter(words).of(run.session.state()).first();
        assertEquals(RunScreenState.Act.GO_TO, commit.act());
        assertEquals(ARun.BORE, commit.step());
    }

    @Test
    void aStepIsReachedThroughTheListAndAHeldOneLeadsToWhatItWaitsFor() {
        run(() -> {
            Scene scene = opened().scene();
            press(scene, "step-3");
            assertEquals(3, run.session.state().inHand().number());
            press(scene, "commit-answered");
        });
        assertEquals(1, run.session.state().inHand().number());
    }

    @Test
    void aDoubtAndAStruckOutReadingShowAtTheirStep() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE).enter("47.990");
        run.session.strikeOut(
                run.session.state().pass().readings().get(0).entry().seq(), "Chip under the anvil");
        run.session.flagDoubt("Anvil worn?");
        RunScreenState.Found found =
                new RunPresenter(words).of(run.session.state()).found();
        assertEquals("Doubt: “Anvil worn?”.", found.shown().get(0));
        assertTrue(found.rest().contains("1 struck out."), found.rest()::toString);
    }

    @Test
    void aStepWithoutWordsOfTheDrawingShowsItsLimits() throws Exception {
        run.setUpAndGoTo(8);
        assertEquals(
                "48.30 to 48.60 mm",
                new RunPresenter(words).of(run.session.state()).inHand().drawing());
    }
}
