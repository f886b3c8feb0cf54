package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.ui.run.RunShown.Act;
import org.tenthwise.app.ui.run.RunShown.Meaning;
import org.tenthwise.app.ui.shell.Errands;
import org.tenthwise.model.plan.Register;

/** The keys of cutting, under a double tap and a gauge that types fast. Outside Ø48, 47.980 to 48.000, guard band 0.003, four readings. */
class CutHandlingTest extends RunAtHand {

    private RunViewModel atOnce() {
        return new RunViewModel(run.session, run.session.state(),
                new Errands(new Background(Runnable::run, Runnable::run), words, ways), ways, words, clock);
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

    private static Act big(RunViewModel model) {
        return model.commitProperty().get().act();
    }

    private int passes() {
        return run.session.state().line().passes().size();
    }

    private Register counts() {
        return run.session.state().sheet().run().register().orElse(null);
    }

    @Test
    void theBigKeyTakesNoCutBeforeTheLastPlaceIsRead() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        RunViewModel model = atOnce();
        for (String figure : List.of("48.032\n", "48.030\n", "48.031\n")) {
            sends(model, figure);
            assertEquals(Act.WAIT, big(model));
            model.press();
            assertEquals(1, passes());
            assertTrue(model.shownProperty().get().found().next().contains("still to be read before a cut is worked out"));
        }
    }

    @Test
    void whereTheRestIsToStayUnreadAnotherKeySignsForIt() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        clock.hold();
        RunViewModel model = atOnce();
        sends(model, "48.032\n");
        assertEquals("Cut on these", model.shownProperty().get().allowed().otherWay().orElseThrow().label());
        model.keepOrAgain();
        assertEquals(List.of(), ways.asked, "a finger that was coming down to read again");
        clock.pass(400);
        model.keepOrAgain();
        assertEquals(List.of("cut on these"), ways.asked);
        assertEquals(1, passes());
    }

    @Test
    void theRegisterIsAskedOnceEverythingIsReadAndTheSecondTapTakesNoCut() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        clock.hold();
        RunViewModel model = atOnce();
        sends(model, "48.032\n48.030\n48.031\n48.032\n");
        RunShown.Panel.Ask asked = (RunShown.Panel.Ask) model.shownProperty().get().panel();
        assertEquals("Lathe 4: does its X offset count in diameters or in radii?", asked.words());
        assertEquals(List.of("In diameters", "In radii"), asked.replies().stream().map(RunShown.Reply::label).toList());
        assertEquals(Act.WAIT, big(model));
        model.reply(new Meaning.Counts(Register.RADIUS));
        assertEquals(null, counts(), "the answer lay under the finger that typed");
        clock.pass(400);
        model.reply(new Meaning.Counts(Register.RADIUS));
        assertEquals(Register.RADIUS, counts());
        model.press();
        assertEquals(1, passes());
        clock.pass(400);
        assertEquals(Act.CUT_TAKEN, big(model));
        // half of 48.031 less 47.990 is 0.0205
        assertEquals("Change the X offset by −0.020 mm, counted in radii.", model.shownProperty().get().found().next());
        model.press();
        model.press();
        assertEquals(2, passes());
    }

    @Test
    void aFigureThatComesWhileTheRegisterIsAskedIsSaidNotToBeTaken() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        clock.hold();
        RunViewModel model = atOnce();
        sends(model, "48.032\n48.030\n48.031\n48.032\n48.033\n");
        assertEquals(4, run.session.state().pass().readings().size());
        assertEquals(1, ways.told.size());
        assertTrue(ways.told.get(0).words().contains("48.033"), () -> ways.told.get(0).words());
    }

    /** 47.998 is inside 48.000 by less than the guard band, and metal is left. */
    @Test
    void aLightCutOnWhatIsUnprovenCanBeTaken() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        RunViewModel model = atOnce();
        sends(model, "47.998\n47.998\n47.997\n47.998\n");
        model.reply(new Meaning.Counts(Register.DIAMETER));
        assertEquals("Light cut taken", model.commitProperty().get().word());
        model.press();
        assertEquals(2, passes());
    }
}
