package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.text.Advice;
import org.tenthwise.app.text.Remarks;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.model.verdict.VerdictKind;

/** What is said of two bores and where they lie, read at both ends. All figures by hand. */
class PositionWordsTest extends RunAtHand {

    @BeforeEach
    void begin() throws Exception {
        beginARunOf(InventedPlans.inMillimetres(PositionScreenTest.BORES_THEN_THEIR_PLACES));
    }

    private void read(String... readings) throws Exception {
        run.session.goTo(2);
        run.enter(readings);
    }

    private VerdictKind standing() {
        return run.session.state().line().finding().verdict().standing();
    }

    private List<String> remarks() {
        return new Remarks(words).of(run.session.state().line().finding());
    }

    /** Twice the root of 0.03² and 0.04² is 0.1 at A, with 0.03 of bonus; B has the least room: 0.02 of 0.15. */
    @Test
    void itIsSaidWhichAxisDecidesAndHowFarItIsInside() throws Exception {
        run.enter("10.03", "10.05");
        read("20.03", "15.04", "20.02", "15.03", "20.01", "-15", "20.065", "-15");
        assertEquals(VerdictKind.PASS, standing());
        assertEquals(
                "0.020 mm inside the zone with its bonus.",
                new Sentences(words).distance(run.session.state().line().finding()));
        assertTrue(remarks().contains("B, exit: X +0.065, Y 0.000 off."), remarks()::toString);
        assertTrue(remarks().contains("Datum shift is not counted: that is on the safe side."));
    }

    @Test
    void whereItFailsNoOffsetIsNamed() throws Exception {
        run.enter("10.03", "10.05");
        read("20.03", "15.04", "20.06", "15.05", "20.01", "-15", "20.065", "-15");
        assertEquals(VerdictKind.FAIL, standing());
        assertEquals(
                "Pick up the datums again and read it again. No offset brings it in: if it stays out, it needs a "
                        + "disposition.",
                new Advice(words).next(run.session.state().line()));
    }

    /** A bore too small may be cut again, and then the zone is another. */
    @Test
    void whileTheSizeCanChangeItWaitsForIt() throws Exception {
        run.enter("10.03");
        read("20", "15", "20", "15", "20", "-15", "20", "-15");
        assertEquals(VerdictKind.OPEN, standing());
        assertEquals(
                "Waits for check 1.",
                new Sentences(words).distance(run.session.state().line().finding()));
    }

    @Test
    void aBoreOutsideItsLimitsFailsItWhateverThePlace() throws Exception {
        run.enter("10.03", "10.12");
        read("20", "15", "20", "15", "20", "-15", "20", "-15");
        assertEquals(VerdictKind.FAIL, standing());
        assertEquals(
                "The size of check 1 is outside its limits: so is the position, wherever it lies.",
                new Sentences(words).distance(run.session.state().line().finding()));
        assertEquals(
                "Settle check 1 first: the position goes with it.",
                new Advice(words).next(run.session.state().line()));
    }

    /** A coordinate below zero is a coordinate; one of the other hole is asked about by the finding. */
    @Test
    void aCoordinateBelowZeroIsTakenAndOneWithAWrongSignIsFarOff() throws Exception {
        run.enter("10.03", "10.05");
        read("20", "15", "20", "15", "20", "15");
        assertTrue(remarks().get(0).contains("15 is far off"), remarks()::toString);
        assertFalse(run.session.state().line().finding().verdict().passed());
        assertEquals(
                "No advice is given from a reading that is far off. Strike it out and read again, or get a "
                        + "disposition.",
                new Advice(words).next(run.session.state().line()));
    }
}
