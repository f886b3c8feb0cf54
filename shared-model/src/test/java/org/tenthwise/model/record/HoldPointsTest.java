package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;
import static org.tenthwise.model.record.Bench.size;
import static org.tenthwise.model.record.Bench.with;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.PlugFeel;
import org.tenthwise.model.plan.PlugFitCheck;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.tolerance.Limits;

/** When a hold point was opened, and by whom: never told of one that is shut, nor by what counts no more. */
class HoldPointsTest {

    private static final int LOT = 1;
    private static final int BORE = 2;
    private static final int PLUG = 3;

    private final Bench bench = new Bench();
    private final HoldPoints points = new HoldPoints();

    @BeforeEach
    void aHoldPointBehindTheLotTheBoreAndItsPlug() {
        bench.step(new AskedCheck.Confirm("The lot is that on the card."))
                .step(size(Feature.BORE, "20.000", "20.021", Combine.EACH, 2))
                .step(
                        new PlugFitCheck(
                                BORE,
                                Limits.between(mm("0.000"), mm("0.030")),
                                places(1),
                                PlugFeel.WITH_DRAG,
                                with(GaugeKind.MICROMETER)),
                        LOT,
                        BORE,
                        PLUG)
                .step(new AskedCheck.Confirm("Thread tool in."));
    }

    private Optional<HoldOpened> opened() {
        return points.opened(bench.sheet(), bench.sheet().plan().step(PLUG));
    }

    private Settled last() {
        return opened().orElseThrow().last();
    }

    private void lot(Answer answer) {
        bench.did(new StepEvent.Answered(LOT, Question.CONFIRMED, answer));
    }

    private StepEvent.ReadingTaken secondPlace(String figure) {
        return new StepEvent.ReadingTaken(
                BORE, bench.sheet().plan().step(BORE).check().slots().get(1).key(), mm(figure));
    }

    private void plug() {
        bench.read(PLUG, "19.998").did(new StepEvent.Answered(PLUG, Question.PLUG_FEELS, Answer.WITH_DRAG));
    }

    private void allThree() {
        bench.later(1, "Setter 1");
        lot(Answer.YES);
        bench.later(1, "Setter 2").read(BORE, "20.010", "20.011");
        bench.later(1, "Setter 3");
        plug();
    }

    @Test
    void itIsOpenedByTheEntryThatSettledTheLastOfItsSteps() {
        allThree();
        assertEquals(bench.last(), last().by().seq());
        assertEquals("Setter 3", last().person());
        assertEquals(Settled.How.PASSED, last().how());
        assertEquals(
                List.of("Setter 1", "Setter 2", "Setter 3"),
                opened().orElseThrow().settled().stream().map(Settled::person).toList());
        assertEquals(List.of(), opened().orElseThrow().signedFor());
    }

    @Test
    void aStepThatPassedByItsLastReadingWasPassedByThatOne() {
        allThree();
        assertEquals(4, opened().orElseThrow().settled().get(1).by().seq(), "the second place of the bore");
    }

    @Test
    void theOrderOfTheStepsIsNotTheOrderInWhichTheyPassed() {
        bench.later(1, "Setter 2").read(BORE, "20.010", "20.011");
        plug();
        assertEquals(Optional.empty(), opened());
        bench.later(1, "Setter 1");
        lot(Answer.YES);
        assertEquals("Setter 1", last().person());
        assertEquals(LOT, last().line().step().number());
    }

    @Test
    void whatIsNotedAfterItOpensItNoEarlierAndNoLater() {
        allThree();
        long by = last().by().seq();
        bench.later(5, "Inspector 1").did(new StepEvent.NoteMade(PLUG, "seen"));
        assertEquals(by, last().by().seq());
        assertEquals(
                by,
                new HoldPoints()
                        .opened(bench.sheet(), bench.sheet().plan().step(PLUG))
                        .orElseThrow()
                        .last()
                        .by()
                        .seq());
    }

    @Test
    void aReadingStruckOutShutsItAndTheNextOneOpensItAnew() {
        allThree();
        bench.later(9, "Setter 4").did(new Event.StruckOut(4, "misread"));
        assertEquals(Optional.empty(), opened());
        bench.did(secondPlace("20.012"));
        assertEquals(Optional.empty(), opened(), "the plug was tried before");
        plug();
        assertEquals("Setter 4", last().person());
        assertEquals("Setter 4", opened().orElseThrow().settled().get(1).person());
        assertEquals("Setter 1", opened().orElseThrow().settled().get(0).person(), "nothing changed there");
    }

    @Test
    void measuredAgainItIsShutUntilItPassedAgain() {
        allThree();
        bench.later(9, "Setter 4").did(new StepEvent.PassBegun(LOT, Why.MEASURED_AGAIN));
        assertEquals(Optional.empty(), opened());
        lot(Answer.YES);
        assertEquals("Setter 4", last().person());
        assertEquals(LOT, last().line().step().number());
    }

    @Test
    void aReadingTakenAgainThatPassesToo() {
        allThree();
        long opened = last().by().seq();
        bench.later(9, "Setter 4").did(new StepEvent.Answered(LOT, Question.CONFIRMED, Answer.YES));
        assertEquals(opened, last().by().seq(), "it was open all the while");
        assertEquals("Setter 1", opened().orElseThrow().settled().get(0).person());
    }

    @Test
    void aConcessionIsOpenedByWhoSignedForItNotByWhoTypedIt() {
        lot(Answer.YES);
        bench.read(BORE, "20.010", "20.011").read(PLUG, "19.968");
        bench.did(new StepEvent.Answered(PLUG, Question.PLUG_FEELS, Answer.WITH_DRAG));
        assertEquals(Optional.empty(), opened());
        bench.later(30, "Setter 5")
                .did(new StepEvent.DispositionSigned(
                        PLUG, Disposition.USE_AS_IS, "agreed", "Design office", Optional.of("117")));
        assertEquals(Settled.How.CONCEDED, last().how());
        assertEquals("Design office", last().person());
        assertEquals(bench.last(), last().by().seq());
        assertEquals(1, opened().orElseThrow().signedFor().size());
    }

    @Test
    void aLapsedConcessionOpensNothing() {
        aConcessionIsOpenedByWhoSignedForItNotByWhoTypedIt();
        bench.did(new StepEvent.ReadingTaken(
                PLUG, bench.sheet().plan().step(PLUG).check().slots().get(0).key(), mm("19.967")));
        assertEquals(Optional.empty(), opened());
    }

    @Test
    void aStepThatPassesAfterAConcessionWasOpenedByWhatItPassedWith() {
        lot(Answer.YES);
        bench.read(BORE, "20.010", "20.023")
                .later(30, "Setter 5")
                .did(new StepEvent.DispositionSigned(BORE, Disposition.USE_AS_IS, "agreed", "Design office"));
        plug();
        assertEquals("Design office", opened().orElseThrow().settled().get(1).person());
        bench.later(1, "Setter 6").did(secondPlace("20.012"));
        plug();
        assertEquals("Setter 6", opened().orElseThrow().settled().get(1).person());
        assertEquals(Settled.How.PASSED, opened().orElseThrow().settled().get(1).how());
    }

    @Test
    void whatFailsOpensNothing() {
        lot(Answer.NO);
        bench.read(BORE, "20.010", "20.011");
        plug();
        assertEquals(Optional.empty(), opened());
        lot(Answer.YES);
        assertTrue(opened().isPresent());
    }

    @Test
    void aStepThatIsNoHoldPointIsNeverOpened() {
        allThree();
        assertFalse(
                points.opened(bench.sheet(), bench.sheet().plan().step(BORE)).isPresent());
        assertThrows(IllegalArgumentException.class, () -> new HoldOpened(List.of()));
    }
}
