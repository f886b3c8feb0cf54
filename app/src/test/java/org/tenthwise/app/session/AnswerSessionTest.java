package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.verdict.VerdictKind;

/** Questions answered by a tap that goes on, and answers taken back. */
class AnswerSessionTest extends RunBegun {

    private static final String UNDONE = "Undone at once";

    AnswerSessionTest() {
        super(
                InventedPlans.inMillimetres(
                        """
                [[step]]
                number = 1
                operation = 10
                kind = "confirm"
                name = "Grip"
                what = "Jaws wiped."

                [[step]]
                number = 2
                operation = 10
                kind = "go-not-go"
                name = "Hole"
                method = "By hand."
                go = "Goes through."
                not_go = "Enters."
                gauge = "LP-8"
                hold = [1, 2]

                [[step]]
                number = 3
                operation = 10
                kind = "width"
                name = "Slot"
                method = "In the middle."
                lower = 12.000
                upper = 12.043
                places = ["middle"]
                gauge_kind = "inside-micrometer"
                gauge = "IM-1"

                [[step]]
                number = 4
                operation = 10
                kind = "look"
                name = "Edges"
                what = "Broken."
                """));
    }

    private int inHand() {
        return session.state().inHand().number();
    }

    @Test
    void aGoodAnswerGoesOnToTheNextCheck() throws Exception {
        taken(session.answers().give(1, Answer.YES));
        assertEquals(2, inHand());
    }

    @Test
    void aBadAnswerStaysInSight() throws Exception {
        taken(session.answers().give(1, Answer.NO));
        assertEquals(1, inHand());
        assertEquals(VerdictKind.FAIL, standing());
    }

    @Test
    void theFirstOfTwoAnswersStaysForTheSecond() throws Exception {
        session.goTo(2);
        taken(session.answers().give(2, Answer.YES));
        assertEquals(
                new Prompt.Answering(Question.NOT_GO_STAYS_OUT), session.state().asked());
        taken(session.answers().give(2, Answer.NO));
        assertEquals(2, inHand());
        assertEquals(VerdictKind.FAIL, standing());
    }

    /** It would look like the next check and be one passed over. */
    @Test
    void nothingLeadsBackByItself() throws Exception {
        session.goTo(2);
        session.answers().give(2, Answer.YES);
        taken(session.answers().give(2, Answer.YES));
        assertEquals(Optional.of(1), session.state().next().map(step -> step.number()));
        assertEquals(2, inHand());
    }

    @Test
    void whoeverAnswersACheckHeDoesNotSeeAnswersNone() throws Exception {
        session.answers().give(1, Answer.YES);
        assertEquals(Objection.Kind.NOT_ASKED_HERE, refused(session.answers().give(1, Answer.YES)));
        assertEquals(2, inHand());
        assertEquals(VerdictKind.OPEN, standing());
    }

    @Test
    void theAnswerIsTakenBackAndItsCheckIsAskedAgain() throws Exception {
        session.answers().give(1, Answer.YES);
        Entry answer = session.state().undoable().orElseThrow();
        taken(session.answers().undo(answer.seq(), UNDONE));
        assertEquals(1, inHand());
        assertEquals(new Prompt.Answering(Question.CONFIRMED), session.state().asked());
        assertEquals(VerdictKind.OPEN, standing());
        Pass.Answering struck = session.state().pass().answers().get(0);
        assertEquals(Answer.YES, struck.answer());
        assertEquals(UNDONE, struck.struck().orElseThrow().reason());
    }

    @Test
    void aBadAnswerIsTakenBackToo() throws Exception {
        session.answers().give(1, Answer.NO);
        taken(session.answers().undo(session.state().undoable().orElseThrow().seq(), UNDONE));
        assertEquals(VerdictKind.OPEN, standing());
    }

    @Test
    void nothingIsTakenBackTwice() throws Exception {
        session.answers().give(1, Answer.YES);
        long answer = session.state().undoable().orElseThrow().seq();
        session.answers().undo(answer, UNDONE);
        assertEquals(Optional.empty(), session.state().undoable());
        assertEquals(Objection.Kind.NOT_ASKED_HERE, refused(session.answers().undo(answer, UNDONE)));
    }

    /** What was done after it was done in the belief that it stood. */
    @Test
    void nothingIsTakenBackAfterTheNextEntry() throws Exception {
        session.answers().give(1, Answer.YES);
        long answer = session.state().undoable().orElseThrow().seq();
        session.answers().give(2, Answer.YES);
        assertEquals(Objection.Kind.NOT_ASKED_HERE, refused(session.answers().undo(answer, UNDONE)));
        session.note("Bar sings");
        assertEquals(Optional.empty(), session.state().undoable());
        assertTrue(session.state().sheet().run().struck(answer).isEmpty());
    }

    /** A later check that was only looked at is left; what was held opens and shuts with the answer. */
    @Test
    void whatItOpenedIsShutAgain() throws Exception {
        session.answers().give(1, Answer.YES);
        session.answers().give(2, Answer.YES);
        session.answers().give(2, Answer.YES);
        assertEquals(3, inHand());
        taken(session.answers().undo(session.state().undoable().orElseThrow().seq(), UNDONE));
        assertEquals(2, inHand());
        assertTrue(session.state().sheet().line(3).held());
        assertEquals(Objection.Kind.HELD, refused(enteredAt(3, "12.020")));
    }

    private Reply enteredAt(int step, String figure) throws Exception {
        session.goTo(step);
        return session.enter(figure);
    }

    @Test
    void aReadingIsNotTakenBackByOneTap() throws Exception {
        session.answers().give(1, Answer.YES);
        session.answers().give(2, Answer.YES);
        session.answers().give(2, Answer.YES);
        enter("12.020");
        assertEquals(Optional.empty(), session.state().undoable());
    }
}
