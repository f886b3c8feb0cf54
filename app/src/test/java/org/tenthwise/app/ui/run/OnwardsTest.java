package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.ui.run.RunScreenState.Act;
import org.tenthwise.app.ui.run.RunScreenState.Meaning;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;

/**
 * A check that passed plainly gives way by itself to one that is answered by a tap, and to no other; what it came to
 * stays in sight there. Nothing that was meant for it answers the next.
 */
class OnwardsTest extends RunAtHand {

    private static final Plan COLLAR = InventedPlans.inMillimetres(
            """
            [[step]]
            number = 1
            operation = 10
            kind = "diameter"
            name = "Collar"
            method = "Two ways."
            lower = 69.90
            upper = 70.10
            places = [{ name = "0°", angle = 0 }, { name = "90°", angle = 90 }]
            gauge_kind = "caliper"
            gauge = "CA-1"
            """
                    + look(2, "Edges")
                    + depth(3, "Shoulder", "11.80", "12.20")
                    + "hold = [3]\n"
                    + look(4, "Face")
                    + depth(5, "Groove", "11.80", "12.20")
                    + depth(6, "Recess", "11.80", "12.20")
                    + look(7, "Part"));

    private static final String GROOVE = depth(1, "Groove", "11.80", "12.20");
    private static final String RECESS = GROOVE + depth(2, "Recess", "39.80", "40.20") + look(3, "Part");

    private static String depth(int number, String name, String lower, String upper) {
        return """

            [[step]]
            number = %d
            operation = 10
            kind = "depth"
            name = "%s"
            method = "From the face."
            lower = %s
            upper = %s
            places = [{ name = "anywhere" }]
            gauge_kind = "caliper"
            gauge = "CA-1"
            """
                .formatted(number, name, lower, upper);
    }

    private static String look(int number, String name) {
        return """

            [[step]]
            number = %d
            operation = 10
            kind = "look"
            name = "%s"
            what = "Clean."
            """
                .formatted(number, name);
    }

    /** Its point takes 2.4 mm off: (8/2)/tan(118°/2), by hand. */
    private static String drilled(int number) {
        return """
            [[step]]
            number = %d
            operation = 10
            kind = "depth"
            name = "Oil hole"
            method = "To the point."
            lower = 103.5
            upper = 104.5
            places = ["point of the drill"]
            drill = { diameter = 8, point_angle = 118 }
            read_to = "point"
            gauge_kind = "depth-gauge"
            gauge = "DG-2"
            """
                        .formatted(number)
                + look(number + 1, "Part");
    }

    private RunViewModel model;

    @BeforeEach
    void atACollar() throws Exception {
        beginARunOf(COLLAR);
        model = atOnce();
    }

    private int inHand() {
        return run.session.state().inHand().number();
    }

    private void leftBy(Runnable deed, int to) {
        deed.run();
        assertEquals(to, inHand());
        assertEquals(to, model.stateProperty().get().inHand().number());
    }

    @Test
    void thePassStaysInSightAtTheQuestion() {
        leftBy(() -> sends(model, "70.02\n70.03\n"), 2);
        assertEquals(
                "1 Collar: Pass, 70.03, 0.07 inside",
                model.shownProperty().get().finished().orElseThrow().words());
        model.reply(new Meaning.Answered(Answer.YES));
        assertEquals(3, inHand());
        assertEquals(
                "2 Edges: Pass, OK",
                model.shownProperty().get().finished().orElseThrow().words());
    }

    /** A tenth of the tolerance is 0.02: nearer to a limit, or further apart, the check is looked at. */
    @ParameterizedTest
    @CsvSource({
        "70.08, 70.08, 2",
        "70.08, 70.09, 1",
        "69.92, 69.92, 2",
        "69.91, 69.92, 1",
        "70.02, 70.04, 2",
        "70.02, 70.05, 1",
        "70.02, 70.10, 1",
        "70.02, 70.11, 1",
        "70.02, 69.89, 1",
        "70.02, 50.02, 1"
    })
    void onlyAPlainPassGivesWay(String first, String second, int to) {
        leftBy(() -> sends(model, first + "\n" + second + "\n"), to);
    }

    @Test
    void whatIsStillToBeReadStays() {
        leftBy(() -> sends(model, "70.02\n"), 1);
    }

    @Test
    void whatIsDoubtedStays() throws Exception {
        run.session.flagDoubt("Jaw worn?");
        leftBy(() -> sends(model, "70.02\n70.02\n"), 1);
    }

    @Test
    void whatIsReadWithTwoGaugesStays() throws Exception {
        run.enter("70.02");
        run.session.gauge().choose("CA-9");
        model.refresh();
        leftBy(() -> sends(model, "70.02\n"), 1);
    }

    /** It is what is to be done next. */
    @Test
    void whatFollowsAnOpenCheckStays() throws Exception {
        beginARunOf(InventedPlans.inMillimetres(RECESS));
        run.session.goTo(2);
        model = atOnce();
        leftBy(() -> sends(model, "40.01\n"), 2);
        assertTrue(run.session.state().line().settled());
    }

    @Test
    void noHoldPointIsPassedOver() {
        run.session.goTo(3);
        model.refresh();
        leftBy(() -> sends(model, "12.00\n"), 3);
        assertEquals(Act.NEXT, model.commitProperty().get().act());
    }

    /** Its digits begin it. */
    @Test
    void nothingThatTakesAFigureIsGoneOnTo() throws Exception {
        beforeTheGroove();
        leftBy(() -> sends(model, "12.00\n"), 5);
        assertTrue(model.stateProperty().get().figureBeginsNext());
    }

    /** A figure that fits the check before as well was perhaps sent there once too often. */
    @Test
    void whatItsOnlyFigureOpenedStaysWhereItCouldBeMeantForTheOneBefore() throws Exception {
        beforeTheGroove();
        sends(model, "12.00\n");
        leftBy(() -> sends(model, "12.01\n"), 6);
        assertTrue(run.session.state().line().settled());
        leftBy(model::press, 7);
    }

    @Test
    void whatItsOnlyFigureOpenedGivesWayWhereItCanBeNoOther() throws Exception {
        beginARunOf(InventedPlans.inMillimetres(RECESS));
        model = atOnce();
        sends(model, "12.00\n");
        leftBy(() -> sends(model, "40.01\n"), 3);
        assertEquals(
                "2 Recess: Pass, 40.01, 0.19 inside",
                model.shownProperty().get().finished().orElseThrow().words());
    }

    /** That the point is taken off stands there before it is read. */
    @Test
    void aDrilledHoleGivesWayWhereItWasInHandBeforeItWasRead() throws Exception {
        beginARunOf(InventedPlans.inMillimetres(drilled(1)));
        model = atOnce();
        assertTrue(
                model.shownProperty().get().found().shown().stream()
                        .anyMatch(said -> said.contains("point of the drill")),
                () -> model.shownProperty().get().found().toString());
        leftBy(() -> sends(model, "106.5\n"), 2);
    }

    @Test
    void aDrilledHoleThatAFigureOpenedStays() throws Exception {
        beginARunOf(InventedPlans.inMillimetres(GROOVE + drilled(2)));
        model = atOnce();
        sends(model, "12.00\n");
        leftBy(() -> sends(model, "106.5\n"), 2);
        assertTrue(run.session.state().line().settled());
    }

    @Test
    void whatIsGoneBackToIsNotLeft() {
        sends(model, "70.02\n70.02\n");
        leftBy(() -> model.goTo(1), 1);
        model.refresh();
        assertEquals(1, inHand());
    }

    @Test
    void aFigureSentOnceTooOftenAnswersNothing() {
        sends(model, "70.02\n70.02\n70.02\n");
        assertEquals(2, inHand());
        assertTrue(run.session.state().pass().isEmpty());
        assertEquals(2, run.session.state().sheet().line(1).pass().readings().size());
        assertEquals(1, ways.told.size(), ways.told::toString);
    }

    @Test
    void theTapThatEnteredTheLastReadingDoesNotAnswer() {
        clock.hold();
        sends(model, "70.02\n70.02\n");
        assertEquals(2, inHand());
        for (int bounced = 0; bounced < 8; bounced++) {
            model.reply(new Meaning.Answered(Answer.YES));
            model.press();
            clock.pass(100);
        }
        assertEquals(2, inHand());
        assertTrue(run.session.state().pass().isEmpty());
        model.reply(new Meaning.Answered(Answer.YES));
        assertEquals(3, inHand());
    }

    @Test
    void theKeysThatCameAreDeafToTheFingerForAMoment() {
        run(() -> {
            Scene scene = opened().scene();
            type(scene, "70.02\n70.03");
            press(scene, "commit");
            assertEquals("2", text(scene, "step-number"));
            assertTrue(Stream.<Node>iterate(scene.lookup("#reply-0"), Objects::nonNull, Node::getParent)
                    .anyMatch(Node::isMouseTransparent));
            assertTrue(scene.lookup("#commit-answered").isDisabled());
        });
    }

    /** The last reading is struck out at its own check, which its key names. */
    @Test
    void itsReadingsAreStruckOutFromTheNext() {
        run(() -> {
            Scene scene = opened().scene();
            type(scene, "70.02\n70.03\n");
            assertEquals("Strike out at 1", ((Button) scene.lookup("#strike")).getText());
            press(scene, "strike");
        });
        assertEquals(1, inHand());
        assertEquals(List.of("form STRIKE " + run.session.id()), ways.asked);
    }

    @Test
    void onceTheNextIsAnsweredItsOwnAnswerIsTakenBack() {
        sends(model, "70.02\n70.03\n");
        model.reply(new Meaning.Answered(Answer.NO));
        assertFalse(model.shownProperty().get().finished().isPresent());
        model.undoOrStrike();
        assertEquals(2, inHand());
        assertTrue(run.session.state().asked().asQuestion().isPresent());
        assertEquals(2, run.session.state().sheet().line(1).pass().readings().size());
    }

    @Test
    void aPassThatGaveWayHoldsEverywhere() throws Exception {
        sends(model, "70.02\n70.03\n");
        seen("run", "gave-way-asked", window -> new RunScreen(model, window.pictures(), words));
    }

    private void beforeTheGroove() throws Exception {
        sends(model, "70.02\n70.02\n");
        run.session.answers().give(2, Answer.YES);
        run.enter("12.00");
        run.session.goOn();
        run.session.answers().give(4, Answer.YES);
        model.refresh();
        assertEquals(5, inHand());
    }
}
