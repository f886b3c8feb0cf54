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
import org.tenthwise.app.text.Advice;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** A bore of an invented bush and the plug that must fit it with drag, walked without a screen. Figures by hand. */
class RestsOnSessionTest extends RunBegun {

    private static final int BORE = 1;
    private static final int PLUG = 2;
    private static final int AFTER = 3;

    RestsOnSessionTest() {
        super(plan());
    }

    @Test
    void aBoreCutAgainOpensThePlugThatFittedIt() throws Exception {
        enter("20.002");
        session.goTo(PLUG);
        enter("19.998");
        taken(session.answer(Answer.WITH_DRAG));
        assertEquals(VerdictKind.PASS, standing());

        session.goTo(BORE);
        taken(session.again(Why.CUT));
        enter("20.028");
        assertEquals(VerdictKind.PASS, standing());
        assertEquals(Optional.of(PLUG), session.state().next().map(step -> step.number()));

        session.goTo(PLUG);
        assertEquals(VerdictKind.OPEN, standing());
        assertInstanceOf(Prompt.Reading.class, session.state().asked());
        assertEquals(
                "Check 1 was cut since. Measure this one again.",
                new Advice(Words.of(Locale.ENGLISH)).next(session.state().line()));
        enter("19.998");
        assertInstanceOf(Prompt.Answering.class, session.state().asked());
        taken(session.answer(Answer.FREELY));
        assertEquals(VerdictKind.FAIL, standing());
        assertEquals(2, session.state().line().passes().size());
    }

    @Test
    void howAPlugFeltIsTakenBackByOneTapUntilAnythingElseIsEntered() throws Exception {
        enter("20.002");
        session.goTo(PLUG);
        enter("19.998");
        assertEquals(Optional.empty(), session.state().undoable());
        taken(session.answers().give(PLUG, Answer.FREELY));
        assertEquals(VerdictKind.FAIL, standing());
        taken(session.answers().undo(session.state().undoable().orElseThrow().seq(), "Wrong key"));
        assertInstanceOf(Prompt.Answering.class, session.state().asked());
        assertEquals(1, session.state().pass().standing().size());
        taken(session.answers().give(PLUG, Answer.WITH_DRAG));
        assertEquals(VerdictKind.PASS, standing());
        taken(session.note("Greased"));
        assertEquals(Optional.empty(), session.state().undoable());
    }

    @Test
    void aPlugTriedBeforeTheBoreWasReadIsTriedAgain() throws Exception {
        session.goTo(PLUG);
        enter("19.998");
        taken(session.answer(Answer.WITH_DRAG));
        session.goTo(BORE);
        enter("20.002");
        session.goTo(PLUG);
        assertEquals(VerdictKind.OPEN, standing());
        assertInstanceOf(Prompt.Reading.class, session.state().asked());
    }

    @Test
    void aConcessionLapsesWithTheReadingItWasSignedForAndTheHoldPointIsShutAgain() throws Exception {
        enter("20.033");
        taken(session.dispose(Disposition.USE_AS_IS, "Does no harm", "Inspector 1", "C-1"));
        session.goTo(AFTER);
        assertFalse(session.state().line().held());
        session.goTo(BORE);
        taken(session.strikeOut(session.state().pass().readings().get(0).entry().seq(), "Misread"));
        enter("21.000");
        assertEquals(VerdictKind.FAIL, standing());
        assertFalse(session.state().line().settled());
        assertTrue(session.state().line().lapsed().isPresent());
        session.goTo(AFTER);
        assertEquals(new Prompt.Held(List.of(BORE)), session.state().asked());
    }

    @Test
    void nothingIsSignedForACheckThatIsOpenAndNoConcessionForOneThatPassed() throws Exception {
        for (Disposition disposition : Disposition.values()) {
            assertEquals(
                    Objection.Kind.STILL_OPEN, refused(session.dispose(disposition, "because", "Inspector 1", "C-1")));
        }
        enter("20.010");
        assertEquals(
                Objection.Kind.PASSED,
                refused(session.dispose(Disposition.USE_AS_IS, "because", "Inspector 1", "C-1")));
    }

    @Test
    void afterReworkTheCheckIsAskedAnew() throws Exception {
        enter("20.033");
        taken(session.dispose(Disposition.REWORK, "Sleeve it", "Inspector 1", ""));
        assertEquals(VerdictKind.OPEN, standing());
        assertInstanceOf(Prompt.Reading.class, session.state().asked());
        enter("20.010");
        assertEquals(VerdictKind.PASS, standing());
    }

    @Test
    void aPassThatBeginsByItselfIsNotBegunByHand() throws Exception {
        enter("20.010");
        assertEquals(Objection.Kind.NOT_ASKED_HERE, refused(session.again(Why.REWORKED)));
    }

    private static Plan plan() {
        return InventedPlans.inMillimetres(
                """
                [[step]]
                number = 1
                operation = 10
                kind = "bore"
                name = "Bore"
                method = "One way."
                lower = 20.000
                upper = 20.030
                places = ["0°"]
                cut_again = "too small"
                gauge_kind = "inside-micrometer"
                gauge = "IM-1"

                [[step]]
                number = 2
                operation = 10
                kind = "plug-fit"
                name = "Plug"
                method = "By hand."
                bore_step = 1
                clearance_least = 0.000
                clearance_greatest = 0.030
                places = ["middle"]
                feel = "with-drag"
                gauge_kind = "micrometer"
                gauge = "M-1"
                hold = [1]

                [[step]]
                number = 3
                operation = 10
                kind = "confirm"
                name = "Chips out"
                what = "Chips are out of the bore."
                """);
    }
}
