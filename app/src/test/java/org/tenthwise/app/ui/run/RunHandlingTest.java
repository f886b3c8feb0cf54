package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.session.Asked;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.ui.shell.Errands;
import org.tenthwise.app.ui.shell.Message;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.Event.PassBegun.Why;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.verdict.Standing;

/** How the run screen handles: by its keys, by a keyboard and by a gauge that types. */
class RunHandlingTest extends RunAtHand {

    @Test
    void aReadingTakesItsDigitsAndOneTap() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        run(() -> {
            Scene scene = opened().scene();
            for (char digit : "47990".toCharArray()) {
                press(scene, "digit-" + digit);
                if (digit == '7') {
                    press(scene, "point");
                }
            }
            assertEquals("47.990", text(scene, "reading"));
            press(scene, "commit");
        });
        assertEquals(1, run.session.state().pass().readings().size());
        assertEquals("47.990", run.session.state().pass().readings().get(0).typed().text());
    }

    @Test
    void aGaugeThatTypesWalksThroughTheReadingsAndIntoTheNextCheck() throws Exception {
        run.setUpAndGoTo(8);
        run(() -> {
            Scene scene = opened().scene();
            type(scene, "48.310\n");
            assertEquals(Standing.PASS, run.session.state().line().finding().verdict().standing());
            type(scene, "47.990\n47.991\n");
        });
        assertEquals(ARun.OUTSIDE, run.session.state().inHand().number());
        assertEquals(List.of("47.990", "47.991"),
                run.session.state().pass().readings().stream().map(reading -> reading.typed().text()).toList());
    }

    @Test
    void anEnterTooManyTakesNothingTwice() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        run(() -> type(opened().scene(), "47.990\n\n"));
        assertEquals(1, run.session.state().pass().readings().size());
    }

    @Test
    void aFigureThatIsNotTakenComesBackWithTheReason() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        run(() -> {
            Scene scene = opened().scene();
            type(scene, "4799.0\n");
            assertEquals("4799.0", text(scene, "reading"));
            assertEquals("Far off: about 47.990.", text(scene, "prompt"));
            strike(scene, KeyCode.BACK_SPACE);
            assertFalse(text(scene, "prompt").startsWith("Far off"));
        });
        assertTrue(run.session.state().pass().readings().isEmpty());
    }

    @Test
    void aGaugeThatSendsEnterTwiceDoesNotInsistAndItsNextFigureStandsAlone() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        run(() -> type(opened().scene(), "9999\n\n0.00x\n47.990\n"));
        assertEquals(List.of("47.990"),
                run.session.state().pass().readings().stream().map(reading -> reading.typed().text()).toList());
    }

    @Test
    void aFigureSentWhileAMessageStandsIsToldAfterIt() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        run(() -> {
            Window window = opened();
            window.shell().tell(Message.plain("First", "of two", "Understood"));
            settle(window.scene());
            type(window.scene(), "47.990\n");
            ((Button) window.scene().lookup("#message").lookup(".key")).fire();
            settle(window.scene());
            assertTrue(window.scene().getRoot().lookupAll(".label").stream()
                    .anyMatch(node -> node instanceof Label label && label.getText().startsWith("47.990 was typed")));
        });
        assertTrue(run.session.state().pass().readings().isEmpty());
    }

    @Test
    void aDoubtAndAStruckOutReadingShowAtTheirStep() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE).enter("47.990");
        run.session.strikeOut(run.session.state().pass().readings().get(0).entry().seq(), "Chip under the anvil");
        run.session.flagDoubt("Anvil worn?");
        String remarks = new Showing(words).of(run.session.state()).found().remarks();
        assertTrue(remarks.startsWith("Doubt: “Anvil worn?”. 1 struck out."), remarks);
    }

    @Test
    void aStepWithoutWordsOfTheDrawingShowsItsLimits() throws Exception {
        run.setUpAndGoTo(8);
        assertEquals("48.30 to 48.60 mm", new Showing(words).of(run.session.state()).inHand().drawing());
    }

    @Test
    void aPlugThatWaitsForItsBoreLeadsThere() throws Exception {
        run.setUpAndGoTo(ARun.PLUG).enter("29.990", "29.990");
        run.session.answer(Answer.FREELY);
        RunShown.Commit commit = new Showing(words).of(run.session.state()).first();
        assertEquals(RunShown.Act.GO_TO, commit.act());
        assertEquals(ARun.BORE, commit.step());
    }

    @Test
    void aFigureNothingTakesIsTold() {
        run(() -> {
            Scene scene = opened().scene();
            ways.told.clear();
            type(scene, "47.990\n");
        });
        assertEquals(1, ways.told.size());
        assertTrue(ways.told.get(0).title().startsWith("Not taken"));
    }

    @Test
    void aFigureThatCannotBeKeptComesBackAndTheTroubleIsTold() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        run.close();
        run(() -> {
            Scene scene = opened().scene();
            ways.told.clear();
            type(scene, "47.990\n");
            assertEquals("47.990", text(scene, "reading"));
        });
        assertEquals(1, ways.told.size());
        assertEquals("Not saved", ways.told.get(0).title().substring(0, 9));
    }

    @Test
    void figuresSentWhileOneIsOnItsWayAreEntriesInTheirOrder() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        List<Runnable> waiting = new ArrayList<>();
        RunViewModel model = slow(waiting);
        sends(model, "47.990\n47.985\n47.98");
        assertEquals(1, waiting.size());
        waiting.remove(0).run();
        assertEquals(List.of("47.990"), readings());
        sends(model, "6\n");
        waiting.remove(0).run();
        waiting.remove(0).run();
        assertEquals(List.of("47.990", "47.985", "47.986"), readings());
        assertEquals(List.of(), waiting);
        assertEquals(List.of(), ways.told);
    }

    @Test
    void aQueueThatMeetsAFigureFarOffStopsThereAndNamesWhatItDidNotTake() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        List<Runnable> waiting = new ArrayList<>();
        RunViewModel model = slow(waiting);
        sends(model, "47.990\n47990\n47.985\n47.98x\n");
        waiting.remove(0).run();
        waiting.remove(0).run();
        assertEquals(List.of("47.990"), readings());
        assertEquals(1, ways.told.size());
        assertTrue(ways.told.get(0).words().endsWith("Not taken: 47990, 47.985, 47.98x."), ways.told.get(0).words());
    }

    @Test
    void aQueueThatComesToTheEndOfATurnStopsThere() throws Exception {
        run.session.answer(Answer.YES);
        run.session.goTo(ARun.RUN_OUT);
        List<Runnable> waiting = new ArrayList<>();
        RunViewModel model = slow(waiting);
        sends(model, "0.040\n0.000\n0.033\n");
        waiting.remove(0).run();
        waiting.remove(0).run();
        assertEquals(List.of(), waiting);
        assertEquals(List.of("0.040", "0.000"), readings());
        assertTrue(ways.told.get(0).words().endsWith("Not taken: 0.033."), ways.told.get(0).words());
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
        assertTrue(ways.asked.contains("stood elsewhere"), ways.asked.toString());
        assertEquals(5, run.session.state().pass().standing().size());
    }

    @Test
    void aQueueThatMeetsAFullCheckStopsThere() throws Exception {
        run.setUpAndGoTo(8);
        List<Runnable> waiting = new ArrayList<>();
        RunViewModel model = slow(waiting);
        sends(model, "48.310\n47.990\n47.991\n");
        waiting.remove(0).run();
        assertEquals(List.of(), waiting);
        assertEquals(8, model.stateProperty().get().inHand().number());
        assertTrue(ways.told.get(0).words().endsWith("Not taken: 47.990, 47.991."), ways.told.get(0).words());
    }

    @Test
    void aFigureRightAfterTheLastOfACheckIsAskedAboutAndTakenIntoTheNextOnPurpose() throws Exception {
        run.setUpAndGoTo(8);
        clock.hold();
        RunViewModel model = slow(null);
        sends(model, "48.310\n");
        clock.pass(999);
        sends(model, "47.990\n");
        assertEquals(8, run.session.state().inHand().number());
        assertEquals("47.990 came when check 8 was full: is it the first of check 9?", ways.told.get(0).words());
        ways.told.get(0).replies().get(0).then().run();
        assertEquals(ARun.OUTSIDE, run.session.state().inHand().number());
        assertEquals(List.of("47.990"), readings());
    }

    @Test
    void aFigureThatIsNotPlainlyOfTheNextCheckIsAskedAboutHoweverLate() throws Exception {
        run.setUpAndGoTo(8);
        RunViewModel model = slow(null);
        // check 9 is 47.980 to 48.000; five times 0.020 from 47.990 is 48.090
        sends(model, "48.310\n48.091\n");
        assertEquals(8, run.session.state().inHand().number());
        assertEquals(1, ways.told.size());
        ways.told.get(0).replies().get(1).then().run();
        sends(model, "48.090\n");
        assertEquals(ARun.OUTSIDE, run.session.state().inHand().number());
    }

    @Test
    void aFarOffFigureIsKeptByAnotherKeyThatIsDeafAtFirst() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        clock.hold();
        RunViewModel model = slow(null);
        clock.pass(400);
        sends(model, "47990\n");
        model.press();
        model.press();
        clock.pass(399);
        model.keepOrAgain();
        assertEquals(List.of(), readings());
        clock.pass(400);
        model.keepOrAgain();
        assertEquals(List.of("47990"), readings());
        assertFalse(model.shownProperty().get().found().next().contains("offset"));
    }

    @Test
    void aSecondTapOnKeepBeginsNoPass() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        clock.hold();
        RunViewModel model = slow(null);
        sends(model, "47990\n");
        clock.pass(400);
        model.keepOrAgain();
        clock.pass(399);
        model.keepOrAgain();
        assertEquals(List.of("47990"), readings());
        clock.pass(1);
        model.keepOrAgain();
        assertEquals(List.of(), readings());
    }

    @Test
    void aSecondTapOnNextCheckTakesNoSuggestion() throws Exception {
        run.setUpAndGoTo(12).enter("46.05");
        clock.hold();
        RunViewModel model = slow(null);
        clock.pass(400);
        model.press();
        assertEquals(ARun.BORE, run.session.state().inHand().number());
        run.session.gauge().tellSense(false);
        model.refresh();
        model.press();
        clock.pass(399);
        model.press();
        assertTrue(run.session.state().asked() instanceof Asked.Certified);
        clock.pass(1);
        model.press();
        assertTrue(run.session.state().asked() instanceof Asked.Zero);
    }

    @Test
    void aFigureOnTheHeelsOfARefusalIsNamedWithIt() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        clock.hold();
        RunViewModel model = slow(null);
        sends(model, "0.00x\n4");
        assertTrue(ways.told.get(0).words().endsWith("Not taken: 0.00x."), ways.told.get(0).words());
        assertEquals("4", model.interrupted());
    }

    @Test
    void aBlankOrALetterPressesNoKeyAndControlWithEnterDoes() {
        run(() -> {
            Scene scene = opened().scene();
            scene.lookup("#back").requestFocus();
            type(scene, " x");
            strike(scene, KeyCode.SPACE);
            strike(scene, KeyCode.ENTER);
            assertEquals(List.of(), ways.asked);
            pressFocused(scene);
        });
        assertEquals(List.of("back"), ways.asked);
    }

    private RunViewModel slow(List<Runnable> waiting) {
        Errands errands = new Errands(new Background(waiting == null ? Runnable::run : waiting::add, Runnable::run), words, ways);
        return new RunViewModel(run.session, run.session.state(), errands, ways, words, clock);
    }

    private static void sends(RunViewModel model, String keys) {
        for (char key : keys.toCharArray()) {
            if (key == '\n') {
                model.enter();
            } else {
                model.character(Character.toString(key));
            }
        }
    }

    private List<String> readings() {
        return run.session.state().pass().readings().stream().map(reading -> reading.typed().text()).toList();
    }

    @Test
    void digitsAreNotTakenWhereNoneAreAsked() {
        run(() -> {
            Scene scene = opened().scene();
            type(scene, "12\n");
            press(scene, "reply-0");
            press(scene, "commit-answered");
        });
        assertEquals(2, run.session.state().inHand().number());
    }

    @Test
    void theSenseMasterAndZeroOfABoreGaugeAreTwoTapsAndTwoAnswers() throws Exception {
        run.setUpAndGoTo(ARun.BORE);
        run(() -> {
            Scene scene = opened().scene();
            press(scene, "reply-1");
            press(scene, "commit");
            press(scene, "commit");
            press(scene, "reply-0");
        });
        assertTrue(run.session.state().asked() instanceof Asked.Temperature);
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
        assertTrue(run.session.state().asked() instanceof Asked.Temperature);
        assertEquals(Standing.OPEN, run.session.state().line().finding().verdict().standing());
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
        assertEquals(List.of("20 °C", "20 °C"), run.session.state().pass().temperatures().stream()
                .map(taken -> taken.read().toString()).toList());
        assertTrue(run.session.state().asked() instanceof Asked.Reading);
    }

    @Test
    void aGaugeThatTypesIntoTheTemperatureIsNotTakenForAThermometer() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setOnMaster();
        run(() -> type(opened().scene(), "+0.013\n+0.013\n"));
        assertTrue(run.session.state().pass().isEmpty());
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
        assertEquals(Optional.of(Register.RADIUS), run.session.state().sheet().run().register());
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
        assertEquals(Standing.PASS, run.session.state().line().finding().verdict().standing());
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
    void everyWayOutIsAsked() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("0.0245");
        run(() -> {
            Scene scene = opened().scene();
            for (String key : List.of("back", "doubt", "note", "strike", "sign-for", "gauge", "commit")) {
                press(scene, key);
            }
            strike(scene, KeyCode.ESCAPE);
        });
        assertEquals(List.of("back", "say DOUBT", "say NOTE", "strike", "dispose", "gauge", "dispose"), ways.asked);
    }

    @Test
    void theLastCheckLeadsToTheSignature() throws Exception {
        run.session.close("Inspector 1", SignedAs.NOT_ACCEPTED);
        run(() -> press(opened().scene(), "commit-answered"));
        assertEquals(List.of("record " + run.session.id()), ways.asked);
    }

    @Test
    void everyKeyIsReachedByTheTabulator() {
        run(() -> {
            Scene scene = opened().scene();
            assertTrue(scene.getRoot().lookupAll(".key").stream().filter(node -> node instanceof Button)
                    .allMatch(node -> node.isFocusTraversable()));
        });
    }

    @Test
    void theSecondTapOnAnAnswerTypesNoFigure() throws Exception {
        run.setUpAndGoTo(ARun.BORE);
        run(() -> {
            Scene scene = opened().scene();
            press(scene, "reply-1");
            assertTrue(run.session.state().asked() instanceof Asked.Certified);
            assertTrue(scene.lookup("#digit-0").getParent().getParent().isMouseTransparent());
        });
    }

    @Test
    void whenAQuestionIsAnsweredTheFocusStaysUnderTheHand() {
        run(() -> {
            Scene scene = opened().scene();
            scene.lookup("#reply-0").requestFocus();
            pressFocused(scene);
            strike(scene, KeyCode.TAB);
            assertEquals("commit-answered", scene.getFocusOwner().getId());
        });
    }

    @Test
    void aGaugeThatSendsTheSameFarOffFigureAgainDoesNotInsist() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        run(() -> type(opened().scene(), "4799.0\n4799.0\n"));
        assertEquals(List.of(), run.session.state().pass().readings().stream().map(reading -> reading.typed().text()).toList());
    }

    @Test
    void aRefusedFigureStaysHoweverOftenTheKeyIsPressed() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        run(() -> {
            Scene scene = opened().scene();
            type(scene, "-48.0");
            press(scene, "commit");
            assertEquals("\u221248.0", text(scene, "reading"));
            press(scene, "commit");
            assertEquals("\u221248.0", text(scene, "reading"));
        });
    }

    @Test
    void aRefusedFigureWithItsSignTurnedIsEntered() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        run(() -> {
            Scene scene = opened().scene();
            type(scene, "-47.990\n");
            press(scene, "sign");
            type(scene, "\n");
        });
        assertEquals(1, run.session.state().pass().readings().size());
    }

    private static String text(Scene scene, String id) {
        settle(scene);
        return ((Label) scene.lookup("#" + id)).getText();
    }
}
