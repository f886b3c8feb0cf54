package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.run.RunScreenState.Act;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;

/** What can scrap the part, or makes readings worth nothing, is on the sheet and never behind a key. */
class WhatStaysInSightTest extends RunAtHand {

    private RunScreenState.Found found() {
        return new RunPresenter(words).of(run.session.state()).found();
    }

    private void stays(String beginning) {
        assertTrue(found().shown().stream().anyMatch(said -> said.startsWith(beginning)), found()::toString);
        assertFalse(found().rest().stream().anyMatch(said -> said.startsWith(beginning)), found()::toString);
    }

    @Test
    void aDoubtAnotherGaugeAndALapsedSignatureStay() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE).enter("47.970", "47.990");
        run.session.dispose(Disposition.USE_AS_IS, "Fits", "Inspector 1", "C-1");
        run.session.gauge().choose("MC-9");
        run.enter("47.991", "47.992");
        run.session.strikeOut(
                run.session.state().pass().readings().get(1).entry().seq(), "Misread");
        run.session.flagDoubt("Anvil worn?");
        stays("Doubt: “Anvil worn?”.");
        stays("Read with more than one gauge");
        stays("Signature lapsed.");
        assertTrue(found().rest().contains("1 struck out."), found()::toString);
    }

    @Test
    void aContradictionStays() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("0.012", "0.012", "0.011", "0.011");
        run.session.goTo(ARun.PLUG);
        run.enter("30.020", "30.020");
        run.session.answer(Answer.FREELY);
        stays("Hand and gauges contradict");
        assertEquals("Measure bore or plug again, and try the plug again: one of them is wrong.", found().next());
    }

    @Test
    void thatNothingIsCorrectedYetStays() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setOnMaster();
        run.session.readingsFirst(true);
        run.enter("0.015", "0.014");
        stays("Temperature matters here");
    }

    @Test
    void aFigureFarOffStays() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE).session.keep("47990");
        stays("47990 is far off");
    }

    /** The change that is in the control already, 20 times what may come off: read as done, it would be done again. */
    @Test
    void thatACutWouldComeOffTwiceIsPartOfWhatToDo() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE)
                .session
                .machine(org.tenthwise.model.plan.Register.DIAMETER, org.tenthwise.model.plan.Aim.ByLimits.MIDDLE);
        run.enter("48.100", "48.100", "48.100", "48.100");
        run.session.again(Why.CUT);
        run.enter("48.100", "48.100", "48.100", "48.100");
        assertTrue(found().next().contains("it would come off twice"), found()::next);
    }

    @Test
    void aRootThatIsClearedIsTheOneThingWorthKnowingOfAThreadThatPassed() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("0.012", "0.012", "0.011", "0.011");
        Workshop.toTheThread(run.session);
        run.enter("3.620", "40.749", "40.755", "40.752");
        assertEquals(List.of("Wire clears the root by 0.755 mm."), found().shown());
    }

    /**
     * Uncertainty 0.0035 by the plan; inside by 0.006 and by 0.0035 it is proven, by 0.003 it is not (ISO 14253-1:
     * conformity is proven in the tolerance less the uncertainty).
     */
    @Test
    void aPassIsCalledProvenOnlyFurtherInsideThanTheUncertainty() throws Exception {
        assertEquals(List.of("Uncertainty 0.0035 mm: the pass is proven."), atTheBore("0.015"));
        assertEquals(List.of("Uncertainty 0.0035 mm: the pass is proven."), again("0.0175"));
        assertEquals(List.of("Uncertainty 0.0035 mm: the limit is nearer than that."), again("0.0176"));
        assertEquals(List.of("Uncertainty 0.0035 mm: the limit is nearer than that."), again("0.018"));
    }

    @Test
    void nothingIsCalledProvenWhileAnythingSpeaksAgainstTheReadings() throws Exception {
        atTheBore("0.015");
        run.session.flagDoubt("Ring not wiped?");
        assertEquals(List.of("Doubt: “Ring not wiped?”."), found().shown());
        assertFalse(found().rest().stream().anyMatch(said -> said.contains("proven")), found()::toString);
    }

    /** 0.023 larger at once, where two readings of an uncertainty of 0.0035 may differ by 0.007. */
    @Test
    void aBoreReadAgainThatIsAnotherSizeIsNotProvenButReadBefore() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("0.011", "0.011", "0.011", "-0.013");
        assertEquals(
                List.of("Read before: 29.987 (at 38, 90°). No cut is entered since, so one of the two is wrong."
                        + " Check the gauge, read again, and strike out what was wrong."),
                again("0.010"));
        assertEquals("", found().next());
        assertFalse(found().rest().stream().anyMatch(said -> said.contains("proven")), found()::toString);
        assertFalse(new RunPresenter(words).saysNoMore(run.session.state()));
    }

    /** Of a journal that was in size already it would take off 0.050. */
    @Test
    void byReadingsThatContradictEachOtherNoCutIsAdvised() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE)
                .session
                .machine(org.tenthwise.model.plan.Register.DIAMETER, org.tenthwise.model.plan.Aim.ByLimits.MIDDLE);
        run.enter("47.990", "47.990", "47.990", "47.990");
        run.session.again(Why.MEASURED_AGAIN);
        run.enter("48.040", "48.040", "48.040", "48.040");
        stays("Read before: 47.990 (");
        assertEquals("", found().next());
        assertEquals(
                Act.READ_AGAIN,
                new RunPresenter(words).of(run.session.state()).first().act());
    }

    private List<String> atTheBore(String last) throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("0.011", "0.011", "0.011", last);
        return found().shown();
    }

    private List<String> again(String last) throws Exception {
        run.session.again(Why.MEASURED_AGAIN);
        run.enter("20", "20", "0.011", "0.011", "0.011", last);
        return found().shown();
    }

    /** One struck out and not read again is not taken; nothing taken, all of the method is to be read again. */
    @Test
    void whatIsStruckOutIsNotTaken() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("0.011");
        assertEquals("1 of 4 done", inHand().taken());
        assertFalse(inHand().methodWhole());
        run.session.strikeOut(
                run.session.state().pass().readings().get(0).entry().seq(), "Misread");
        assertEquals("0 of 4 done", inHand().taken());
        assertTrue(inHand().methodWhole());
        run.enter("0.011", "0.011", "0.011", "0.011");
        assertEquals("4 of 4 done", inHand().taken());
    }

    private RunScreenState.InHand inHand() {
        return new RunPresenter(words).of(run.session.state()).inHand();
    }
}
