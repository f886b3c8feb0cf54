package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.ui.run.RunScreenState.Finished;
import org.tenthwise.app.ui.run.RunScreenState.Meaning;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.verdict.VerdictKind;

/** What a check came to that gave way to the next: in sight there, as it stands, and no longer than it is wanted. */
class JustFinishedTest extends RunAtHand {

    private static final int ROUGHED = 8;

    private static String said(RunViewModel model) {
        return model.shownProperty().get().finished().map(Finished::words).orElse("none");
    }

    /** The bore in hand and passed, by a model that has seen it pass. */
    private RunViewModel passedBore(String last) throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge();
        RunViewModel model = atOnce();
        sends(model, "0.015\n0.014\n0.011\n" + last + "\n");
        return model;
    }

    @Test
    void atTheNextCheckItStandsUntilTheFirstReading() throws Exception {
        RunViewModel model = passedBore("0.013");
        assertEquals("none", said(model), "it is in hand itself");
        model.press();
        assertEquals(ARun.PLUG, model.stateProperty().get().inHand().number());
        assertEquals("13 Bore Ø30 H7: Pass, 30.015, 0.006 inside", said(model));
        assertEquals(
                VerdictKind.PASS,
                model.shownProperty().get().finished().orElseThrow().standing());
        model.refresh();
        assertEquals("13 Bore Ø30 H7: Pass, 30.015, 0.006 inside", said(model), "whatever else is looked at");
        sends(model, "29.990\n");
        assertEquals("none", said(model));
    }

    @Test
    void aFigureThatBeginsTheNextCheckLeavesItInSightUntilTheOneAfter() throws Exception {
        run.setUpAndGoTo(ROUGHED);
        RunViewModel model = atOnce();
        sends(model, "48.310\n47.990\n");
        assertEquals(ARun.OUTSIDE, model.stateProperty().get().inHand().number());
        assertEquals(1, readings().size());
        assertTrue(said(model).startsWith("8 OD, roughed: Pass, 48.310, "), said(model));
        sends(model, "47.991\n");
        assertEquals("none", said(model));
    }

    @Test
    void figuresSentAtOnceLeaveItNoLongerThanTheReadingsTheyAre() throws Exception {
        run.setUpAndGoTo(ROUGHED);
        Deque<Runnable> waiting = new ArrayDeque<>();
        RunViewModel model = model(waiting::add);
        sends(model, "48.310\n");
        waiting.remove().run();
        sends(model, "47.990\n47.991\n");
        waiting.remove().run();
        assertTrue(said(model).startsWith("8 "), said(model));
        waiting.remove().run();
        assertEquals("none", said(model));
    }

    @Test
    void anAnswerThatGoesOnLeavesWhatWasAnswered() throws Exception {
        RunViewModel model = atOnce();
        model.reply(new Meaning.Answered(Answer.YES));
        assertEquals(2, model.stateProperty().get().inHand().number());
        assertTrue(said(model).startsWith("1 "), said(model));
        assertTrue(said(model).endsWith(": Pass, confirmed"), said(model));
        model.reply(new Meaning.Answered(Answer.YES));
        assertTrue(said(model).startsWith("2 "), said(model));
    }

    @Test
    void aCheckChosenFromTheListTookNothingsPlace() throws Exception {
        RunViewModel model = passedBore("0.013");
        model.goTo(ARun.PLUG);
        assertEquals("none", said(model));
    }

    @Test
    void aCheckThatIsNotSettledIsNotFinished() throws Exception {
        RunViewModel model = passedBore("0.013");
        run.session.goTo(ARun.OUTSIDE);
        model.refresh();
        sends(model, "47.990\n");
        run.session.goTo(ARun.PLUG);
        model.refresh();
        assertEquals("none", said(model));
    }

    @Test
    void oneThatWasLookedAtAgainWasNotFinishedNow() throws Exception {
        RunViewModel model = passedBore("0.013");
        model.press();
        sends(model, "29.990\n");
        model.goTo(1);
        assertEquals("none", said(model));
        model.press();
        assertEquals("none", said(model), "check 1 was confirmed long ago");
    }

    @Test
    void whatIsStruckOutSinceIsNotSaidToHavePassed() throws Exception {
        RunViewModel model = passedBore("0.013");
        model.press();
        long last = run.session.state().sheet().run().entries().stream()
                .mapToLong(entry -> entry.seq())
                .max()
                .orElseThrow();
        assertEquals(Optional.empty(), run.session.strikeOut(last, "Misread").objection());
        model.refresh();
        assertEquals("none", said(model));
    }

    @Test
    void aConcessionIsNotSaidToBeAPass() throws Exception {
        RunViewModel model = passedBore("0.0245");
        run.session.dispose(Disposition.USE_AS_IS, "Agreed", "Design office", "117");
        model.refresh();
        model.press();
        assertEquals("13 Bore Ø30 H7: Fail, 30.0245, 0.0035 outside, used as is", said(model));
        assertEquals(
                VerdictKind.FAIL,
                model.shownProperty().get().finished().orElseThrow().standing());
    }

    @Test
    void aSizeOnItsLimitSaysSo() throws Exception {
        RunViewModel model = passedBore("0.021");
        model.press();
        assertEquals("13 Bore Ø30 H7: Pass, 30.021, on the limit", said(model));
    }
}
