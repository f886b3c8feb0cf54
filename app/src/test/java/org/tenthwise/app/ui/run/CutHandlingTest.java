package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.run.RunScreenState.Act;
import org.tenthwise.app.ui.run.RunScreenState.Meaning;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * The keys of cutting, under a double tap and a gauge that types fast. Outside Ø48, 47.980 to 48.000, guard band 0.003,
 * four readings.
 */
class CutHandlingTest extends RunAtHand {

    private static final Plan THREAD = InventedPlans.inMillimetres(
            """
            [[step]]
            number = 1
            operation = 10
            kind = "thread-over-wires"
            name = "M10 over wires"
            method = "Three wires."
            designation = "M10x1.5-6g"
            wire = 0.895
            minor_diameter = 8.3
            places = ["middle"]
            cut_again = "too big"
            gauge = "MW-1"

            [[step]]
            number = 2
            operation = 10
            kind = "diameter"
            name = "Outside"
            method = "Micrometer."
            lower = 47.980
            upper = 48.000
            guard_band = 0.003
            least_cut = 0.020
            places = ["middle"]
            cut_again = "too big"
            gauge_kind = "micrometer"
            gauge = "MC-1"

            [[step]]
            number = 3
            operation = 10
            kind = "diameter"
            name = "Outside, by a sharp tool"
            method = "Micrometer."
            lower = 47.980
            upper = 48.000
            guard_band = 0.003
            places = ["middle"]
            cut_again = "too big"
            gauge_kind = "micrometer"
            gauge = "MC-1"
            """);

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
            assertTrue(
                    model.shownProperty().get().found().next().contains("still to be read before a cut is worked out"));
        }
    }

    /** 48.100 down to the middle of 47.980 to 48.000, and a little short of it. */
    @Test
    void inSizeAfterACutTheScreenTellsWhatCameOff() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE).enter("48.100", "48.100", "48.100", "48.100");
        run.session.again(Why.CUT);
        assertFalse(
                String.join(" ", atOnce().shownProperty().get().found().rest()).contains("Cut 1"));
        run.enter("47.992", "47.992", "47.992", "47.992");
        RunScreenState.Found found = atOnce().shownProperty().get().found();
        assertEquals(VerdictKind.PASS, found.standing());
        assertTrue(found.rest().contains("Cut 1: asked 0.110, came off 0.108."), found.rest()::toString);
    }

    /** One of the readings round the cut is wrong: the big key asks for another, and the strip draws no cut. */
    @Test
    void afterACutThatLeftMoreMetalTheBigKeyReadsAgain() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE).enter("48.081", "48.080", "48.081", "48.080");
        run.session.machine(Register.DIAMETER, Aim.ByLimits.MIDDLE);
        run.session.again(Why.CUT);
        run.enter("48.110", "48.111", "48.110", "48.111");
        assertEquals(Act.READ_AGAIN, big(atOnce()));
        run.session.again(Why.MEASURED_AGAIN);
        run.enter("48.010", "48.011", "48.010", "48.011");
        RunViewModel model = atOnce();
        assertEquals(Act.CUT_TAKEN, big(model));
        assertTrue(
                model.shownProperty().get().found().next().startsWith("Asked 0.090, came off 0.070."),
                model.shownProperty().get().found().next());
    }

    @Test
    void whereTheRestIsToStayUnreadAnotherKeySignsForIt() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        clock.hold();
        RunViewModel model = atOnce();
        sends(model, "48.032\n");
        assertEquals(
                "Cut on these",
                model.shownProperty().get().allowed().otherWay().orElseThrow().label());
        model.keepOrAgain();
        assertEquals(List.of(), ways.asked, "a finger that was coming down to read again");
        clock.pass(400);
        model.keepOrAgain();
        assertEquals(List.of("form CUT_ON_THESE " + run.session.id()), ways.asked);
        assertEquals(1, passes());
    }

    @Test
    void theRegisterIsAskedOnceEverythingIsReadAndTheSecondTapTakesNoCut() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        clock.hold();
        RunViewModel model = atOnce();
        sends(model, "48.032\n48.030\n48.031\n48.032\n");
        RunScreenState.PromptPanel.Ask asked =
                (RunScreenState.PromptPanel.Ask) model.shownProperty().get().panel();
        assertEquals("Lathe 4: X offset on diameter or on radius?", asked.words());
        assertEquals(
                List.of("On diameter", "On radius"),
                asked.replies().stream().map(RunScreenState.ReplyKey::label).toList());
        assertEquals(Act.WAIT, big(model));
        model.reply(new Meaning.Counts(Register.RADIUS));
        assertEquals(null, counts(), "the answer lay under the finger that typed");
        clock.pass(800);
        model.reply(new Meaning.Counts(Register.RADIUS));
        assertEquals(Register.RADIUS, counts());
        model.press();
        assertEquals(1, passes());
        clock.pass(400);
        assertEquals(Act.CUT_TAKEN, big(model));
        // half of 48.031 less 47.990 is 0.0205
        assertEquals(
                "Change the X offset by −0.020 mm on radius.",
                model.shownProperty().get().found().next());
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
        assertTrue(
                ways.told.get(0).words().contains("48.033"),
                () -> ways.told.get(0).words());
    }

    /** 47.998 is inside 48.000 by less than the guard band, and metal is left. */
    @Test
    void aLightCutOnWhatIsUnprovenCanBeTaken() throws Exception {
        beginARunOf(THREAD);
        run.session.goTo(3);
        RunViewModel model = atOnce();
        sends(model, "47.998\n");
        model.reply(new Meaning.Counts(Register.DIAMETER));
        assertEquals("Light cut taken", model.commitProperty().get().word());
        model.press();
        assertEquals(2, passes());
    }

    /** 47.983 is inside by the guard band and has nothing left to give; 48.020 is past no limit and still too big. */
    @Test
    void whereNothingMoreMayComeOffTheBigKeyTakesNoCut() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        RunViewModel model = atOnce();
        sends(model, "48.020\n47.983\n48.020\n48.020\n");
        assertTrue(model.shownProperty()
                .get()
                .found()
                .next()
                .endsWith("Nothing more may come off: it needs a disposition."));
        assertEquals(Act.READ_AGAIN, big(model));
        model.press();
        sends(model, "48.020\n47.983\n48.020\n48.020\n");
        assertEquals(Act.DISPOSE, big(model));
    }

    /** The not-go ring goes too far; it is tried again before anybody signs for it. */
    @Test
    void whatALimitGaugeFailsIsTriedAgainBeforeItIsSignedFor() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("0.012", "0.012", "0.011", "0.011");
        Workshop.toTheThread(run.session);
        run.session.goTo(24);
        RunViewModel model = atOnce();
        model.reply(new Meaning.Answered(Answer.YES));
        model.reply(new Meaning.Answered(Answer.NO));
        assertEquals(
                VerdictKind.FAIL, run.session.state().line().finding().verdict().standing());
        assertEquals(Act.READ_AGAIN, big(model));
        model.press();
        model.reply(new Meaning.Answered(Answer.YES));
        model.reply(new Meaning.Answered(Answer.NO));
        assertEquals(Act.DISPOSE, big(model));
    }

    /** 47.970 is past size; nobody gives the part up on that before it is read again. */
    @Test
    void whatIsPastSizeIsReadAgainBeforeItIsSignedFor() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        RunViewModel model = atOnce();
        sends(model, "47.970\n47.970\n47.970\n47.970\n");
        assertEquals(
                VerdictKind.FAIL, run.session.state().line().finding().verdict().standing());
        assertEquals(Act.READ_AGAIN, big(model));
        model.press();
        sends(model, "47.970\n47.970\n47.970\n47.970\n");
        assertEquals(Act.DISPOSE, big(model));
    }

    /**
     * What is said of an offset is true of all that the form tool cuts: a root that was measured good is good no more
     * after it.
     */
    @Test
    void aThreadCutDeeperIsDeeperAtItsRootToo() throws Exception {
        beginARunOf(THREAD);
        run.enter("0.895");
        RunViewModel model = atOnce();
        sends(model, "10.616\n");
        model.reply(new Meaning.Counts(Register.DIAMETER));
        String said = model.shownProperty().get().found().next();
        assertTrue(
                said.startsWith("Change the X offset by \u22120.")
                        && said.endsWith(" mm on diameter. The root goes down with it."),
                said);
    }

    /**
     * 47.999 less 47.990 is 0.0045 deep, under 0.020. Of 0.050 asked 0.009 stands, and down to 47.983 there are 0.016:
     * the spring pass that is advised takes metal off all the same, and the record must say so.
     */
    @Test
    void aSpringPassOnWhatIsUnprovenIsACutToo() throws Exception {
        beginARunOf(THREAD);
        run.session.goTo(2);
        RunViewModel model = atOnce();
        sends(model, "48.040\n");
        model.reply(new Meaning.Counts(Register.DIAMETER));
        model.press();
        sends(model, "47.999\n");
        assertTrue(model.shownProperty().get().found().next().contains("take a spring pass at the same offset"));
        assertEquals("Spring pass taken", model.commitProperty().get().word());
        model.press();
        assertEquals(Optional.of(Why.CUT), run.session.state().pass().why());
        assertEquals(3, passes());
    }

    /** Without a cut before it nobody knows what a spring pass takes: 0.016 may come off, and the tool cuts 0.040. */
    @Test
    void whereNobodyKnowsWhatASpringPassTakesNoneIsAdvised() throws Exception {
        beginARunOf(THREAD);
        run.session.goTo(2);
        RunViewModel model = atOnce();
        sends(model, "47.999\n");
        assertFalse(model.shownProperty().get().found().next().contains("take a spring pass"));
        assertEquals(Act.READ_AGAIN, big(model));
    }

    /**
     * 47.991 has 0.008 to 47.983, and the tool cuts 0.040: the key for the cut that is not advised is not the large
     * one.
     */
    @Test
    void whereTheToolCannotCutSoLittleTheBigKeyTakesNoCut() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
        RunViewModel model = atOnce();
        sends(model, "48.052\n48.030\n47.991\n48.012\n");
        model.reply(new Meaning.Counts(Register.RADIUS));
        assertEquals(
                "Uneven by 0.061 mm: no even cut brings every place in. All along, less may come off than this tool"
                        + " or a spring pass takes: find out why it is uneven, or get a disposition.",
                model.shownProperty().get().found().next());
        assertEquals(Act.READ_AGAIN, big(model));
        assertEquals(
                Optional.of(new Meaning.CutTaken()),
                model.shownProperty().get().allowed().otherWay().map(RunScreenState.OtherWay::meaning));
    }

    /** What goes deeper takes twice as much off the flanks, and the check of those is open after it. */
    @Test
    void aThreadIsCutDeeperOnlyOnceItsPitchDiameterIsKnown() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("0.012", "0.012", "0.011", "0.011");
        Workshop.toTheThread(run.session);
        run.session.goTo(22);
        RunViewModel model = atOnce();
        sends(model, "3.975\n3.978\n3.976\n3.979\n3.975\n");
        assertEquals(
                "Measure check 21 before any cut here: the pitch diameter comes down with it.",
                model.shownProperty().get().found().next());
        assertEquals(Act.GO_TO, big(model));
        model.press();
        assertEquals(21, run.session.state().inHand().number());
        sends(model, "3.620\n40.776\n40.776\n40.776\n");
        run.session.goTo(22);
        assertEquals(
                "Go 0.053 mm deeper. The pitch diameter comes down with it, by 0.106 mm: after the cut measure check 21"
                        + " again as well.",
                atOnce().shownProperty().get().found().next());
        run.session.again(Why.CUT);
        run.enter("4.028", "4.030", "4.029", "4.032", "4.028");
        assertEquals(
                VerdictKind.PASS, run.session.state().line().finding().verdict().standing());
        run.session.goTo(21);
        assertEquals(
                "Check 22 was cut since. Measure this one again.",
                atOnce().shownProperty().get().found().next());
    }
}
