package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.DemoPlans;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.record.SizeFinding;

/**
 * Figures that cannot well be, or cannot be at all, on the screw carrier of the demo: what is asked about, and what is
 * refused.
 */
class SlipsSessionTest {

    private static final int RUN_OUT = 4;
    private static final int OUTSIDE = 9;
    private static final int BORE = 13;

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private RunSession session;

    @BeforeEach
    void setUp() {
        session = workshop.setUp(DemoPlans.outsideAsRead(), "014");
    }

    private SizeFinding outside() {
        return (SizeFinding) session.state().sheet().line(OUTSIDE).finding();
    }

    @Test
    void aSlipOfThePointIsAskedAboutHoweverOftenItIsEnteredAndTakenOnPurposeAlone() throws Exception {
        session.goTo(OUTSIDE);
        Objection slip = new Objection(Objection.Kind.FAR_OFF, "4799.0", "47.990");
        assertEquals(slip, session.enter("4799.0").objection().orElseThrow());
        assertEquals(slip, session.enter("4799.0").objection().orElseThrow());
        assertTrue(outside().measured().isEmpty());
        assertEquals(Optional.empty(), session.keep("4799.0").objection());
        assertEquals(1, outside().measured().size());
        assertEquals(Optional.empty(), outside().proposal());
    }

    @Test
    void aBoreOfLessThanNothingIsNotEvenKeptOnPurpose() throws Exception {
        session.goTo(BORE);
        session.gauge().tellSense(false);
        session.enter("30.000");
        session.enter("");
        session.gauge().confirmSense(true);
        session.readingsFirst(true);
        // 30.000 − 30.000 = 0
        assertEquals(
                Objection.Kind.NO_SUCH_SIZE,
                session.keep("-30.000").objection().orElseThrow().kind());
        assertEquals(
                new Objection(Objection.Kind.FAR_OFF, "-29.999", "0.011"),
                session.enter("-29.999").objection().orElseThrow());
    }

    @Test
    void aMasterThatReadsNeitherNearZeroNorItsSizeIsAskedAbout() throws Exception {
        session.goTo(BORE);
        session.gauge().tellSense(false);
        session.enter("30.000");
        assertEquals(
                new Objection(Objection.Kind.FAR_OFF, "2", "0.000"),
                session.enter("2").objection().orElseThrow());
        assertEquals(Optional.empty(), session.enter("30.000").objection());
    }

    @Test
    void whatIsNoNumberIsRefusedAndChangesNothing() throws Exception {
        session.goTo(OUTSIDE);
        long before = workshop.kept();
        for (String typed : List.of("", "abc", "47,990", "4.7.9", "1e3", "+", "-47.990", "0")) {
            assertTrue(session.enter(typed).objection().isPresent(), typed);
        }
        assertEquals(before, workshop.kept());
    }

    @Test
    void wiresThatCannotSitOnTheFlanksAreRefusedWhenTheyAreSet() throws Exception {
        session = Workshop.toTheThread(workshop.atTheBore("015", "0.012", "0.012", "0.011", "0.011"));
        session.enter("2.000");
        assertEquals(
                Objection.Kind.NO_SUM,
                session.enter("2.000").objection().orElseThrow().kind());
        session.enter("3.620");
        assertInstanceOf(Prompt.Reading.class, session.state().asked());
    }

    @Test
    void aLowestAboveTheHighestIsRefused() throws Exception {
        session = workshop.begin(DemoPart.SCREW_CARRIER, "015");
        session.answer(Answer.YES);
        session.goTo(RUN_OUT);
        session.enter("0.001");
        assertEquals(
                Objection.Kind.WRONG_WAY_ROUND,
                session.enter("0.002").objection().orElseThrow().kind());
        assertEquals(Optional.empty(), session.enter("0.001").objection());
    }
}
