package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.text.CutOnTheseWords;
import org.tenthwise.app.text.MethodWords;
import org.tenthwise.app.text.Remarks;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** The root of an invented stub Acme thread in inches, read across grooves, and a drilled hole read to its point. */
class TouchSessionTest extends RunBegun {

    private static final Words ENGLISH = Words.of(Locale.ENGLISH);
    private static final Plan PLAN = InventedPlans.inInches(
            """
            [[step]]
            number = 1
            operation = 10
            kind = "diameter"
            name = "Root"
            method = "Point micrometer."
            upper = 1.4060
            places = ["front", "back"]
            cut_again = "too big"
            gauge_kind = "micrometer"
            gauge = "MC-9"
            grooves = { threads_per_inch = 8 }
            clamping = "released"

            [[step]]
            number = 2
            operation = 10
            kind = "depth"
            name = "Hole"
            method = "With the rod."
            lower = 0.980
            upper = 1.020
            places = ["middle"]
            cut_again = "too small"
            gauge_kind = "depth-micrometer"
            gauge = "DM-9"
            drill = { diameter = 0.3125, point_angle = 118 }
            read_to = "point"
            clamping = "clamped"
            """);

    TouchSessionTest() {
        super(PLAN);
    }

    private List<String> said() {
        return new Remarks(ENGLISH).of(finding());
    }

    @Test
    void howItTouchedIsAskedOnceEveryPlaceIsRead() throws Exception {
        enter("1.4070");
        assertInstanceOf(Prompt.Reading.class, session.state().asked());
        enter("1.4064");
        assertEquals(
                new Prompt.Answering(Question.GROOVES_TOUCHED), session.state().asked());
        taken(session.answer(Answer.OPPOSITE_GROOVES));
        assertInstanceOf(Prompt.Nothing.class, session.state().asked());
    }

    @Test
    void howItTouchedIsNoMatterOfYesOrNo() throws Exception {
        enter("1.4070", "1.4064");
        assertEquals(Objection.Kind.NOT_ASKED_HERE, refused(session.answer(Answer.YES)));
    }

    /** Half a pitch is 0.0625: 1.4064 − √(1.4064² − 0.0625²) = 0.001389. */
    @Test
    void untilItIsSaidTheCheckStaysOpenAndTellsWhatHangsOnIt() throws Exception {
        enter("1.4070", "1.4064");
        assertEquals(VerdictKind.OPEN, standing());
        assertEquals(
                "How the gauge touched is not entered yet. Points in opposite grooves read 0.0014 in too large.",
                said().get(0));
    }

    /** 1.4070 − 0.001389 = 1.405611, inside 1.4060. */
    @Test
    void acrossOppositeGroovesWhatTheyStandAskewIsTakenOff() throws Exception {
        enter("1.4070", "1.4064");
        taken(session.answer(Answer.OPPOSITE_GROOVES));
        assertEquals(VerdictKind.PASS, standing());
        assertEquals(
                "Points in opposite grooves are half a pitch apart along the axis: \u22120.00139 " + "in.",
                said().get(0));
    }

    @Test
    void squareAcrossTheSameReadingIsStillTooBig() throws Exception {
        enter("1.4070", "1.4064");
        taken(session.answer(Answer.SQUARE_ACROSS));
        assertEquals(VerdictKind.CUT_AGAIN, standing());
        assertTrue(said().contains("Read square across the grooves: nothing to correct."));
    }

    /** What is missing is said as it is; no temperatures are asked here. */
    @Test
    void aCutSignedForBeforeItIsSaidTellsThatThisIsMissing() throws Exception {
        enter("1.4070");
        assertEquals("Not read: back. How the gauge touched the grooves is not entered.", missing());
        enter("1.4064");
        taken(session.cutOnThese("Far from size"));
        assertEquals("How the gauge touched the grooves is not entered.", missing());
        taken(session.answer(Answer.SQUARE_ACROSS));
        assertEquals("", missing());
    }

    private String missing() {
        return new CutOnTheseWords(ENGLISH)
                .missing(PLAN.step(1), session.state().pass(), Optional.of(finding()));
    }

    /** The plan has the root read released: what is too big is not in the chuck any more. */
    @Test
    void whatWasReadReleasedIsTruedUpBeforeItIsCut() throws Exception {
        String said = "It was read unclamped: clamp it and true it up before any cut.";
        enter("1.4070", "1.4064");
        assertFalse(said().contains(said), "nothing is to be cut yet");
        taken(session.answer(Answer.SQUARE_ACROSS));
        assertEquals(said, said().get(0));
        session.goTo(2);
        enter("1.010");
        assertEquals(VerdictKind.CUT_AGAIN, standing());
        assertFalse(said().contains(said), "it was read clamped");
    }

    @Test
    void aPassIsAskedAnew() throws Exception {
        enter("1.4070", "1.4064");
        taken(session.answer(Answer.SQUARE_ACROSS));
        taken(session.again(Why.CUT));
        enter("1.4060", "1.4060");
        assertEquals(
                new Prompt.Answering(Question.GROOVES_TOUCHED), session.state().asked());
    }

    @Test
    void aReadingNoThreadOfThatPitchCanGiveIsRefusedEvenOnPurpose() throws Exception {
        assertEquals(Objection.Kind.NO_SUCH_SIZE, refused(session.keep("0.0625")));
        session.goTo(2);
        assertEquals(Objection.Kind.NO_SUCH_SIZE, refused(session.keep("0.0938")));
    }

    /** 0.3125 / (2 tan 59°) = 0.0939: 1.080 to the point is 0.9861 of full diameter. */
    @Test
    void theRodFindsThePointAndItsLengthIsTakenOff() throws Exception {
        session.goTo(2);
        String before = "Read to the point of the drill: the length of the point, 0.094 in, is taken off. The "
                + "depth is to the full diameter.";
        assertTrue(said().contains(before));
        enter("1.080");
        assertEquals(VerdictKind.PASS, standing());
        taken(session.again(Why.MEASURED_AGAIN));
        enter("1.010");
        assertEquals(VerdictKind.CUT_AGAIN, standing());
    }

    @Test
    void whoeverReadsItReleasedIsToldToUnclampFirst() {
        MethodWords method = new MethodWords(ENGLISH);
        assertEquals("Unclamp first, then read.", method.of(PLAN.step(1), false).get(0));
        assertTrue(method.of(PLAN.step(2), false).contains("Read it clamped."));
    }
}
