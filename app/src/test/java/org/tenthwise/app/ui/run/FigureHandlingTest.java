package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.model.verdict.VerdictKind;

/** Figures on the run screen: by its keys, by a keyboard and by a gauge that types. */
class FigureHandlingTest extends RunAtHand {

    /** 47.99 is in and 47.9912 is another size; 12 would be the reading of the next place. */
    @Test
    void theKeyEndsNoFigureInTheMiddleOfWhatAGaugeTypes() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        RunViewModel model = atOnce();
        clock.hold();
        clock.pass(1000);
        sends(model, "47.99");
        clock.pass(5);
        model.press();
        assertEquals(List.of(), readings());
        sends(model, "12\n");
        assertEquals(List.of("47.9912"), readings());
        sends(model, "47.991");
        clock.pass(400);
        model.press();
        assertEquals(List.of("47.9912", "47.991"), readings());
    }

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
        assertEquals(
                "47.990", run.session.state().pass().readings().get(0).typed().text());
    }

    @Test
    void aGaugeThatTypesWalksThroughTheReadingsAndIntoTheNextCheck() throws Exception {
        run.setUpAndGoTo(8);
        run(() -> {
            Scene scene = opened().scene();
            type(scene, "48.310\n");
            assertEquals(
                    VerdictKind.PASS,
                    run.session.state().line().finding().verdict().standing());
            type(scene, "47.990\n47.991\n");
        });
        assertEquals(ARun.OUTSIDE, run.session.state().inHand().number());
        assertEquals(List.of("47.990", "47.991"), readings());
    }

    /** A sign touched by chance would turn the next figure of the gauge into a size that passes. */
    @ParameterizedTest
    @ValueSource(strings = {"sign", "digit-0", "digit-4", "point"})
    void whatAFingerBeganIsNotGluedToTheFigureOfAGauge(String touched) throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        run(() -> {
            Scene scene = opened().scene();
            press(scene, touched);
            type(scene, "7.990\n");
            assertEquals(List.of(), readings());
            assertEquals("Typed by hand and by a gauge. Read again.", text(scene, "prompt"));
            type(scene, "47.990\n");
        });
        assertEquals(List.of("47.990"), readings());
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
        assertEquals(List.of("47.990"), readings());
    }

    @Test
    void aGaugeThatSendsTheSameFarOffFigureAgainDoesNotInsist() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        run(() -> type(opened().scene(), "4799.0\n4799.0\n"));
        assertEquals(List.of(), readings());
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

    @Test
    void figuresSentWhileAMessageStandsAreToldAfterIt() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        run(() -> {
            Window window = opened();
            window.shell().tell(Notice.plain("First", "of two", "OK"));
            settle(window.scene());
            type(window.scene(), "47.990\n47.991\n");
            ((Button) window.scene().lookup("#message").lookup(".key")).fire();
            settle(window.scene());
            assertTrue(window.scene().getRoot().lookupAll(".label").stream()
                    .anyMatch(node ->
                            node instanceof Label label && label.getText().startsWith("47.990, 47.991 were typed")));
        });
        assertTrue(run.session.state().pass().readings().isEmpty());
    }

    @Test
    void aFigureNothingTakesIsTold() {
        run(() -> {
            Scene scene = opened().scene();
            ways.told.clear();
            type(scene, "47.990\n");
        });
        assertEquals(1, ways.told.size());
        assertTrue(ways.told.get(0).title().startsWith("Not recorded"));
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
    void digitsAreNotTakenWhereNoneAreAsked() {
        run(() -> {
            Scene scene = opened().scene();
            type(scene, "12\n");
            press(scene, "reply-0");
        });
        assertEquals(2, run.session.state().inHand().number());
    }
}
