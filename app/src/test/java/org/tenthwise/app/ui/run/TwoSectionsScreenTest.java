package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.text.RunOutAtHand;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.plan.Holding;

/** The longest that is ever told about a run-out: both axes, a lean, form that stays, and the datum before all of it. */
class TwoSectionsScreenTest extends RunAtHand {

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
        assertEquals("Jaws moved", big());
        run.enter("0.060", "0.024", "0.018", "0.006", "-0.002", "0.002", "0.010", "0.026");
        assertEquals("Read again", big());
    }

    @Test
    void onlyOfFourJawsTheBigKeySaysThatTheyWereMoved() throws Exception {
        swept(Holding.THREE_JAW);
        assertEquals("Trued up", big());
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
        assertEquals(20, StepFigures.measured(run.session.state().line().finding()).size());
        seen("run", "run-out-two-sections-fail", this::screen);
    }
}
