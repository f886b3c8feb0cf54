package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.session.Prompt;
import org.tenthwise.model.plan.Answer;

/**
 * Figures that come faster than they are written, and keys that are tapped twice; time is moved by hand where it
 * counts.
 */
class FigureQueueTest extends RunAtHand {

    private final List<Runnable> waiting = new ArrayList<>();

    private void nextIsDone() {
        waiting.remove(0).run();
    }

    @Test
    void figuresSentWhileOneIsOnItsWayAreEntriesInTheirOrder() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        RunViewModel model = model(waiting::add);
        sends(model, "47.990\n47.985\n47.98");
        assertEquals(1, waiting.size());
        nextIsDone();
        assertEquals(List.of("47.990"), readings());
        sends(model, "6\n");
        nextIsDone();
        nextIsDone();
        assertEquals(List.of("47.990", "47.985", "47.986"), readings());
        assertEquals(List.of(), waiting);
        assertEquals(List.of(), ways.told);
    }

    /** What is shown when the figure before it is kept would wipe it off the pad: it is told, not lost. */
    @Test
    void aFigureThatAFingerBeganBehindOneOnItsWayIsNamed() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        RunViewModel model = model(waiting::add);
        sends(model, "47.990\n");
        model.touched("4");
        sends(model, "7.985\n");
        assertEquals(
                "Typed by hand and by a gauge. Read again. Not recorded: 47.985.",
                ways.told.get(0).words());
        nextIsDone();
        assertEquals(List.of(), waiting);
        assertEquals(List.of("47.990"), readings());
        assertEquals(1, ways.told.size());
    }

    /**
     * The step is begun anew meanwhile, and what is shown then would wipe it off the pad before anybody has read why it
     * was refused.
     */
    @Test
    void aFigureThatAFingerBeganIsNamedWhereAnotherDeedIsDoneRightBehindIt() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE).enter("47.990");
        RunViewModel model = model(waiting::add);
        clock.hold();
        clock.pass(1000);
        model.keepOrAgain();
        model.touched("4");
        sends(model, "7.985\n");
        assertEquals(List.of(), ways.told);
        clock.pass(20);
        nextIsDone();
        assertEquals(
                "Typed by hand and by a gauge. Read again. Not recorded: 47.985.",
                ways.told.get(0).words());
        assertEquals(1, ways.told.size());
        assertEquals(List.of(), readings());
    }

    @Test
    void aQueueThatMeetsAFigureFarOffStopsThereAndNamesWhatItDidNotTake() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        RunViewModel model = model(waiting::add);
        sends(model, "47.990\n47990\n47.985\n47.98x\n");
        nextIsDone();
        nextIsDone();
        assertEquals(List.of("47.990"), readings());
        assertEquals(1, ways.told.size());
        assertTrue(
                ways.told.get(0).words().endsWith("Not recorded: 47990, 47.985, 47.98x."),
                ways.told.get(0).words());
    }

    @Test
    void aQueueThatComesToTheEndOfATurnStopsThere() throws Exception {
        run.session.answer(Answer.YES);
        run.session.goTo(ARun.RUN_OUT);
        RunViewModel model = model(waiting::add);
        sends(model, "0.040\n0.000\n0.033\n");
        nextIsDone();
        nextIsDone();
        assertEquals(List.of(), waiting);
        assertEquals(List.of("0.040", "0.000"), readings());
        assertTrue(
                ways.told.get(0).words().endsWith("Not recorded: 0.033."),
                ways.told.get(0).words());
    }

    @Test
    void aQueueThatMeetsAFullCheckStopsThere() throws Exception {
        run.setUpAndGoTo(8);
        RunViewModel model = model(waiting::add);
        sends(model, "48.310\n47.990\n47.991\n");
        nextIsDone();
        assertEquals(List.of(), waiting);
        assertEquals(8, model.stateProperty().get().inHand().number());
        assertTrue(
                ways.told.get(0).words().endsWith("Not recorded: 47.990, 47.991."),
                ways.told.get(0).words());
    }

    @Test
    void aFigureRightAfterTheLastOfACheckIsAskedAboutAndTakenIntoTheNextOnPurpose() throws Exception {
        run.setUpAndGoTo(8);
        clock.hold();
        RunViewModel model = atOnce();
        sends(model, "48.310\n");
        clock.pass(999);
        sends(model, "47.990\n");
        assertEquals(8, run.session.state().inHand().number());
        assertEquals(
                "47.990 came when check 8 was complete: is it the first of check 9?",
                ways.told.get(0).words());
        ways.told.get(0).replies().get(0).then().run();
        assertEquals(ARun.OUTSIDE, run.session.state().inHand().number());
        assertEquals(List.of("47.990"), readings());
    }

    @Test
    void aFigureThatIsNotPlainlyOfTheNextCheckIsAskedAboutHoweverLate() throws Exception {
        run.setUpAndGoTo(8);
        RunViewModel model = atOnce();
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
        RunViewModel model = atOnce();
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
        RunViewModel model = atOnce();
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
        RunViewModel model = atOnce();
        clock.pass(400);
        model.press();
        assertEquals(ARun.BORE, run.session.state().inHand().number());
        run.session.gauge().tellSense(false);
        run.session.enter("30.000");
        model.refresh();
        model.press();
        clock.pass(399);
        model.press();
        assertTrue(run.session.state().asked() instanceof Prompt.Zero);
        clock.pass(1);
        model.press();
        assertTrue(run.session.state().asked() instanceof Prompt.SenseInFigures);
    }

    @Test
    void aFigureOnTheHeelsOfARefusalIsNamedWithIt() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        clock.hold();
        RunViewModel model = atOnce();
        sends(model, "0.00x\n4");
        assertTrue(
                ways.told.get(0).words().endsWith("Not recorded: 0.00x."),
                ways.told.get(0).words());
        assertEquals("4", model.interrupted());
    }
}
