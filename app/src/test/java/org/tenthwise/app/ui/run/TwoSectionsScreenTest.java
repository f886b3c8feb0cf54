package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.DemoPlans;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.OwnJaw;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.RecordingPen;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.text.RunOutAtHand;
import org.tenthwise.app.ui.Display;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.StepEvent;

/**
 * The longest that is ever told about a run-out: both axes, a lean, form that stays, and the datum before all of it.
 */
class TwoSectionsScreenTest extends RunAtHand {

    /** Of the ring of the limit, which is about half of all that is drawn round it: at 1280 × 800, and anywhere. */
    private static final double REFERENCE_ACROSS = 180;

    private static final double LEAST_ACROSS = 78;

    @BeforeEach
    void ofTwoSections() throws Exception {
        swept(Holding.FOUR_JAW);
    }

    @Test
    void beforeTheReadingsByAngleItHoldsEverywhere() {
        seen("run", "run-out-two-sections-swept", this::screen);
    }

    /** What lies outside the turn of 0.044 was misread: no jaw was moved, and the record must not say so. */
    @Test
    void theBigKeyOnlyReadsAgainWhereFiguresContradictEachOther() throws Exception {
        run.enter("0.060", "0.024", "0.018", "0.006", "-0.002", "0.002", "0.010", "0.026");
        assertEquals("Read again", big());
    }

    /** Who trues it up by the needle alone has a lesser key for it, beside the place where the first was read. */
    @Test
    void whileItIsReadByAngleTheBigKeyEnters() throws Exception {
        assertEquals(List.of("Enter", "Jaws moved"), keys());
        run.enter("0.038");
        assertEquals(List.of("Enter", "Other place"), keys());
        run.enter("0.024");
        assertEquals(List.of("Enter", "Jaws moved"), keys());
    }

    /** The readings by angle would say how to move it; nobody moves what is used as it is. */
    @Test
    void onceItIsSignedForTheBigKeyGoesOn() throws Exception {
        run.session.dispose(Disposition.USE_AS_IS, "Turned true by the datum in operation 40", "Inspector 1", "C-12");
        assertEquals(
                "Disposition: use as is, under concession, Inspector 1. Sign",
                atOnce().shownProperty().get().found().next() + " " + big());
    }

    @Test
    void onlyOfFourJawsTheKeySaysThatTheyWereMoved() throws Exception {
        swept(Holding.THREE_JAW);
        assertEquals(List.of("Enter", "Trued up"), keys());
        atOnce().keepOrAgain();
        assertEquals(
                Optional.of(StepEvent.PassBegun.Why.MOVED),
                run.session.state().pass().why());
    }

    @Test
    void beforeTheFarSectionIsSweptTheBigKeyEnters() throws Exception {
        beginARunOf(RunOutAtHand.twoOfTheDrawing(Holding.FOUR_JAW).plan());
        run.enter("0.040", "-0.004");
        assertEquals(List.of("Enter", "By angle"), keys());
    }

    /** Title, what is asked and the verdict tell the same, whichever way it is read. */
    @Test
    void whatIsReadIsCountedOnce() throws Exception {
        beginARunOf(RunOutAtHand.two(Holding.FOUR_JAW).plan());
        assertEquals(List.of("0 of 4 done", "1 of 4", "4 more to go."), counts());
        run.enter("0.004", "-0.004", "0.005");
        assertEquals(List.of("3 of 4 done", "4 of 4", "One more to go."), counts());
        beginARunOf(RunOutAtHand.two(Holding.FOUR_JAW).plan());
        run.session.turn().sweep(false);
        assertEquals(List.of("0 of 16 done", "1 of 16", "16 more to go."), counts());
        run.enter("0.000", "0.002", "0.004", "0.005", "0.004", "0.002", "0.000", "-0.001", "0.000");
        assertEquals(List.of("9 of 16 done", "10 of 16", "7 more to go."), counts());
    }

    private List<String> counts() {
        RunScreenState shown = atOnce().shownProperty().get();
        String asked = ((RunScreenState.PromptPanel.Pad) shown.panel()).prompt();
        return List.of(
                shown.inHand().taken(),
                asked.substring(0, asked.indexOf(':')),
                shown.found().distance());
    }

    private List<String> keys() {
        RunScreenState shown = atOnce().shownProperty().get();
        return List.of(
                big(),
                shown.allowed().otherWay().map(RunScreenState.OtherWay::label).orElse("Read again"));
    }

    private void swept(Holding holding) throws Exception {
        beginARunOf(RunOutAtHand.twoOfTheDrawing(holding).plan());
        run.enter("0.040", "-0.004", "0.050", "-0.052");
    }

    private String big() {
        return atOnce().commitProperty().get().word();
    }

    @Test
    void theLongestAdviceHoldsEverywhere() throws Exception {
        run.enter("0.038", "0.024", "0.018", "0.006", "-0.002", "0.002", "0.010", "0.026");
        run.enter("0.030", "0.050", "0.045", "0.015", "-0.025", "-0.051", "-0.045", "-0.017");
        assertEquals("Jaws moved", big());
        assertEquals(20, run.session.state().line().finding().measured().size());
        seen("run", "run-out-two-sections-fail", this::screen);
    }

    /** The rings tell which jaw: they are needed most while the longest advice stands with them. */
    @Test
    void withTheAdviceOnBothSectionsTheirRingsAreDrawnLarge() throws Exception {
        bothOver();
        List<String> without = new ArrayList<>();
        onEveryDisplay((display, drawn, room) -> {
            List<Double> across = RecordingPen.of(drawn, room).drawnIn(Role.ZONE).stream()
                    .map(ring -> ring.shape().bounds().width())
                    .toList();
            double least = display.equals(Display.DAY) ? REFERENCE_ACROSS : LEAST_ACROSS;
            if (across.size() != 2 || across.stream().anyMatch(width -> width < least)) {
                without.add("%s: %s in %s".formatted(display.name(), across, room));
            }
        });
        assertEquals(List.of(), without);
    }

    @Test
    void noWordOfAMoveStandsNearerToAnotherJaw() throws Exception {
        bothOver();
        List<String> strayed = new ArrayList<>();
        onEveryDisplay((display, drawn, room) -> OwnJaw.strayed(drawn, RecordingPen.of(drawn, room))
                .forEach(word -> strayed.add(display.name() + ": " + word)));
        assertEquals(List.of(), strayed);
    }

    /** A jaw moved between two readings mixes before and after: the moves come with the last one, and not sooner. */
    @Test
    void noMoveStandsBesideAReadingThatIsStillAsked() throws Exception {
        beginARunOf(RunOutAtHand.two(Holding.FOUR_JAW).plan());
        run.session.turn().sweep(false);
        run.enter("0.038", "0.024", "0.018", "0.006", "-0.002", "0.002", "0.010", "0.026");
        assertEquals("Next: read by angle, far out. That shows which way to move it.", next());
        assertFalse(tellsAMove(), next());
        run.enter("0.030", "0.050", "0.045", "0.015", "-0.025", "-0.051", "-0.045");
        assertEquals("Next: read the other places, far out. They show which way to move it.", next());
        assertFalse(tellsAMove(), next());
        run.enter("-0.017");
        assertTrue(next().contains("tighten jaw 1"), next());
        assertTrue(tellsAMove());
        run.session.strikeOut(
                run.session.state().pass().standing().get("3.1").entry().seq(), "Gauge slipped");
        assertEquals("Next: read the other places, near the jaws. They show which way to move it.", next());
        assertFalse(tellsAMove(), next());
    }

    @Test
    void ofOneSectionTheMovesComeWithTheLastReadingToo() throws Exception {
        beginARunOf(RunOutAtHand.one(Holding.FOUR_JAW).plan());
        run.enter("0.032", "0.000", "0.032", "0.024", "0.000");
        assertEquals("Next: read the other places. They show which way to move it.", next());
        assertFalse(tellsAMove(), next());
        run.enter("0.008");
        assertTrue(tellsAMove());
        run.session.strikeOut(
                run.session.state().pass().standing().get("highest").entry().seq(), "Gauge slipped");
        assertEquals("Next: sweep a full turn.", next());
        assertFalse(tellsAMove(), next());
    }

    /** What is asked on the pad and what the verdict says to do next are one thing, whichever way was chosen. */
    @Test
    void whatIsToBeReadNextIsWhatThePadAsksFor() throws Exception {
        beginARunOf(RunOutAtHand.two(Holding.FOUR_JAW).plan());
        run.enter("0.040", "-0.004");
        assertEquals("3 of 4: highest over a slow turn, far out", asked());
        assertEquals("Next: sweep a full turn, far out.", next());
        run.session.turn().sweep(false);
        assertEquals(
                "Next: read by angle at both sections, near the jaws first. That shows which way to move it.", next());
        run.session.turn().sweep(true);
        run.enter("0.050", "-0.052");
        assertEquals(
                "Next: read by angle at both sections, near the jaws first. That shows which way to move it.", next());
    }

    private String next() {
        return atOnce().shownProperty().get().found().next();
    }

    private String asked() {
        return ((RunScreenState.PromptPanel.Pad) atOnce().shownProperty().get().panel()).prompt();
    }

    /** In words or in the picture. */
    private boolean tellsAMove() {
        Picture drawn = atOnce().shownProperty().get().picture().orElseThrow();
        List<String> texts = RecordingPen.of(drawn, Frame.screen(652, 452, 1)).texts();
        return next().contains("until the needle")
                || texts.stream()
                        .anyMatch(
                                text -> text.equals("loosen") || text.startsWith("in ") || text.startsWith("mallet "));
    }

    /** Where the figures stand at the jaws, no list beside the ring tells them again. */
    @Test
    void aFigureOfAMoveStandsAtItsJawAndNowhereElseInThePicture() throws Exception {
        bothOver();
        run(() -> {
            Window window = opened();
            PictureView shown = new SheetLooks(window.scene()).picture().orElseThrow();
            Picture drawn = atOnce().shownProperty().get().picture().orElseThrow();
            List<String> texts = RecordingPen.of(drawn, Frame.screen(shown.getWidth(), shown.getHeight(), 1))
                    .texts();
            for (String figure : List.of("0.019", "0.008", "mallet 0.006", "run-out 0.042", "run-out 0.054")) {
                assertEquals(
                        1, texts.stream().filter(text -> text.contains(figure)).count(), texts::toString);
            }
            assertEquals(
                    0, texts.stream().filter(text -> text.startsWith("jaw ")).count(), texts::toString);
        });
    }

    /** What is looked for in the picture of the step, as a display shows it. */
    private interface DrawnOn {

        void look(Display display, Picture drawn, Frame room);
    }

    private void onEveryDisplay(DrawnOn shown) {
        for (Display display : displays()) {
            run(() -> {
                Window window = window(display);
                window.shell().show(screen(window));
                settle(window.scene());
                PictureView view = new SheetLooks(window.scene()).picture().orElseThrow();
                Frame room = Frame.screen(
                        view.getWidth(), view.getHeight(), display.look().largeText() ? 1.5 : 1);
                shown.look(display, atOnce().shownProperty().get().picture().orElseThrow(), room);
            });
        }
    }

    private void bothOver() throws Exception {
        beginARunOf(DemoPlans.outsideAsRead());
        run.session.answer(Answer.YES);
        run.session.goTo(ARun.RUN_OUT);
        run.enter("0.002", "-0.040", "0.003", "-0.051", "0.000");
        run.session.strikeOut(
                run.session.state().movable().orElseThrow().reading().entry().seq(), "Gauge slipped");
        run.enter("0.000", "-0.011", "-0.028", "-0.038", "-0.038", "-0.026", "-0.011", "-0.001");
        run.enter("0.000", "-0.014", "-0.036", "-0.048", "-0.049", "-0.034", "-0.014", "-0.002");
    }
}
