package org.tenthwise.app.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.session.SettingFault;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;

/**
 * The story of a step, line by line: what was taken where, with which gauge, when and by whom, and what counts still.
 */
class StepStoryTest extends StoryOfABore {

    @Test
    void beforeAnythingIsDoneNothingIsTold() {
        assertEquals(List.of("Hold point after this check"), headings());
        assertEquals(List.of("1 Lot: not settled |  | "), told("Hold point after this check"));
    }

    @Test
    void everyReadingNamesItsPlaceItsGaugeWhenAndWho() throws Exception {
        setGauge(session);
        enter(session, "0.010");
        session.handOver("Setter 2");
        enter(session, "0.012");
        assertEquals(
                List.of(
                        "0°: 20.010, read 0.010 (BG-1) | 07:34 | Setter 1",
                        "90°: 20.012, read 0.012 (BG-1) | 07:35 | Setter 2"),
                told("This part, serial 014"));
    }

    @Test
    void onAnotherDayTheDayIsSaidWithTheHour() throws Exception {
        setGauge(session);
        enter(session, "0.010");
        later(24 * 60);
        assertEquals(
                List.of("0°: 20.010, read 0.010 (BG-1) | 25 Nov 2026, 07:34 | Setter 1"),
                told("This part, serial 014"));
    }

    @Test
    void whatIsStruckOutSinceIsToldAsSuchWithWhy() throws Exception {
        setGauge(session);
        enter(session, "0.010");
        session.handOver("Setter 2");
        session.strikeOut(session.state().pass().readings().get(0).entry().seq(), "Chip under the gauge");
        assertEquals(
                List.of("0°: 20.010, read 0.010 (BG-1). Struck out by Setter 2: Chip under the gauge."
                        + " | 07:34 | Setter 1 | gone"),
                told("This part, serial 014"));
    }

    @Test
    void aCutTellsWhatWasAskedAndWhatCameOff() throws Exception {
        setGauge(session);
        session.machine(Register.DIAMETER, Aim.ByLimits.MIDDLE);
        enter(session, "-0.090", "-0.090");
        later(10);
        assertEquals(Optional.empty(), session.again(Why.CUT).objection());
        enter(session, "-0.020", "-0.020");
        assertEquals(
                List.of(
                        "This part, serial 014, round 2",
                        "This part, serial 014, round 1",
                        "How it is judged",
                        "Hold point before this check",
                        "Hold point after this check",
                        "Gauge"),
                headings());
        assertEquals(
                List.of(
                        "Measured after a cut. Cut 1: asked 0.100, came off 0.070. | 07:45 | Setter 1",
                        "Round 2, 0°: 19.980, read −0.020 (BG-1) | 07:46 | Setter 1",
                        "Round 2, 90°: 19.980, read −0.020 (BG-1) | 07:47 | Setter 1"),
                told("This part, serial 014, round 2"));
        assertEquals(
                List.of(
                        "Round 1, 0°: 19.910, read −0.090 (BG-1) | 07:34 | Setter 1",
                        "Round 1, 90°: 19.910, read −0.090 (BG-1) | 07:35 | Setter 1",
                        "Round 1, 19.910: Cut again. 0.090 mm below the lower limit. |  | "),
                told("This part, serial 014, round 1"));
    }

    @Test
    void howItIsReadAndJudgedIsTold() throws Exception {
        setGauge(session);
        enter(session, "0.010", "0.012");
        assertTrue(told("How it is judged")
                .contains("Two ways. Rock it through square; read where the needle turns back. |  | "));
    }

    /** 20.000 + 0.010 − 0 is 20.010 on the one, 20.000 − 0.010 + 0 is 19.990 on the other. */
    @Test
    void howASizeIsMadeOfAReadingIsToldByTheSenseOfTheGauge() throws Exception {
        setGauge(session);
        enter(session, "0.010");
        assertTrue(told("How it is judged").contains("Size = ring + reading − dial on the ring. |  | "));
        assertTrue(told("This part, serial 014").get(0).startsWith("0°: 20.010, read 0.010"));
        session = begun(PLAN, "016", "Setter 1");
        lot(session);
        session.goTo(BORE);
        session.gauge().choose("BG-2");
        session.gauge().tellSense(true);
        enter(session, "20.000", "0");
        session.gauge().confirmSense(true);
        enter(session, "0.010");
        assertTrue(told("How it is judged").contains("Size = ring − reading + dial on the ring. |  | "));
        assertTrue(told("This part, serial 016").get(0).startsWith("0°: 19.990, read 0.010"));
    }

    @Test
    void measuredAgainIsNotToldAsACut() throws Exception {
        setGauge(session);
        enter(session, "0.010", "0.012");
        session.again(Why.MEASURED_AGAIN);
        assertEquals(List.of("Measured again. | 07:35 | Setter 1"), told("This part, serial 014, round 2"));
    }

    @Test
    void theHoldPointsBeforeAndAfterTheStepTellWhoOpenedThem() throws Exception {
        setGauge(session);
        assertEquals(List.of("1 Lot: passed | 07:31 | Setter 1"), told("Hold point before this check"));
        assertEquals(List.of("2 Bore: not settled |  | "), told("Hold point after this check"));
        enter(session, "0.010", "0.030");
        session.handOver("Setter 2");
        session.dispose(Disposition.USE_AS_IS, "Agreed", "Design office", "117");
        assertEquals(List.of("2 Bore: under concession | 07:35 | Design office"), told("Hold point after this check"));
        assertEquals(
                List.of("use as is, under concession. Agreed. Concession number: 117. | 07:35 | Design office"),
                told("Notes, doubts, signatures"));
    }

    @Test
    void aLapsedConcessionIsToldAsLapsed() throws Exception {
        theHoldPointsBeforeAndAfterTheStepTellWhoOpenedThem();
        session.again(Why.MEASURED_AGAIN);
        assertEquals(List.of("2 Bore: not settled |  | "), told("Hold point after this check"));
        assertTrue(told("Notes, doubts, signatures").get(0).endsWith("117. Lapsed. | 07:35 | Design office | gone"));
    }

    @Test
    void aSettingThatWasWrongIsToldAsSuchAndSoIsWhatWasReadUnderIt() throws Exception {
        setGauge(session);
        enter(session, "0.010");
        session.gauge().strikeOut(session.state().settingsHere().get(0), SettingFault.ZERO, "Dial had slipped");
        assertEquals(1, told("Gauge").size());
        assertTrue(told("Gauge").get(0).contains("Struck out by Setter 1: Dial had slipped."));
        assertTrue(told("Gauge").get(0).endsWith("gone"));
        assertTrue(told("This part, serial 014").get(0).contains("Struck out by Setter 1: Dial had slipped."));
    }

    @Test
    void theGaugeSetLastIsToldFirst() throws Exception {
        setGauge(session);
        session.gauge().setAnew(false);
        enter(session, "20.001", "0.002");
        assertEquals(
                List.of(
                        "BG-1 · dial goes up as the bore grows · set on ring 20.001 · dial at 0.002 | 07:35 | Setter 1",
                        "BG-1 · dial goes up as the bore grows · set on ring 20.000 · dial at 0 | 07:33 | Setter 1"),
                told("Gauge"));
    }

    @Test
    void notesAndDoubtsOfThisStepAloneAndTheSignaturesOfTheRun() throws Exception {
        session.note("of the lot");
        setGauge(session);
        session.note("bar springs");
        session.flagDoubt("tip worn");
        session.sign("Setter 1", SignedAs.MACHINED_AND_MEASURED);
        assertEquals(
                List.of(
                        "Note: bar springs | 07:33 | Setter 1",
                        "Doubt: tip worn | 07:33 | Setter 1",
                        "Machined and measured by Setter 1. | 07:33 | Setter 1"),
                told("Notes, doubts, signatures"));
        enter(session, "0.010");
        assertTrue(told("Notes, doubts, signatures").get(2).endsWith("gone"), "it lapsed with the reading");
    }

    @Test
    void anAnswerIsToldToo() throws Exception {
        lot(session);
        assertEquals(List.of("confirmed | 07:31 | Setter 1"), told("This part, serial 014"));
    }
}
