package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.text.RunOutAtHand;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.app.ui.shell.Errands;
import org.tenthwise.model.plan.Holding;

/** The longest that is ever told about a run-out: both axes, a lean, form that stays, and the datum before all of it. */
class TwoSectionsScreenTest extends RunAtHand {

    @TempDir
    private Path folder;

    @BeforeEach
    void ofTwoSections() throws Exception {
        run.close();
        run = new ARun(folder.resolve("s.db"), RunOutAtHand.twoOfTheDrawing(Holding.FOUR_JAW).plan());
        run.enter("0.040", "-0.004", "0.050", "-0.052");
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
        run.close();
        run = new ARun(folder.resolve("three.db"), RunOutAtHand.twoOfTheDrawing(Holding.THREE_JAW).plan());
        run.enter("0.040", "-0.004", "0.050", "-0.052");
        assertEquals("Trued up", big());
    }

    private String big() {
        return new RunViewModel(run.session, run.session.state(), new Errands(new Background(Runnable::run, Runnable::run), words, ways), ways, words, clock)
                .commitProperty().get().word();
    }

    @Test
    void theLongestAdviceHoldsEverywhere() throws Exception {
        run.enter("0.038", "0.024", "0.018", "0.006", "-0.002", "0.002", "0.010", "0.026");
        run.enter("0.030", "0.050", "0.045", "0.015", "-0.025", "-0.051", "-0.045", "-0.017");
        assertEquals(20, StepFigures.measured(run.session.state().line().finding()).size());
        seen("run", "run-out-two-sections-fail", this::screen);
    }
}
