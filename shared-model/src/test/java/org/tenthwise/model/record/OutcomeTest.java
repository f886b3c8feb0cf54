package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.record.Bench.runOut;
import static org.tenthwise.model.record.Bench.size;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Signature;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;

/** Step 1 is a set-up confirmation, step 2 a diameter of 47.980 to 48.000 that can be cut again when too big. */
class OutcomeTest {

    private final Bench bench = new Bench()
            .step(new AskedCheck.Confirm("gripped"))
            .step(size(Feature.DIAMETER, "47.980", "48.000", Combine.EACH, 1));

    private OutcomeTest confirmed(Answer answer) {
        bench.did(new StepEvent.Answered(1, Question.CONFIRMED, answer));
        return this;
    }

    private OutcomeTest measured(String typed) {
        bench.read(2, typed);
        return this;
    }

    private void disposed(int step, Disposition disposition) {
        bench.did(new StepEvent.DispositionSigned(step, disposition, "will do", "Design office"));
    }

    private void closed() {
        bench.did(new Event.Closed("Setter 1", SignedAs.MACHINED_AND_MEASURED));
    }

    private Outcome outcome() {
        return bench.sheet().outcome();
    }

    @Test
    void nothingMeasuredIsNotComplete() {
        assertEquals(Outcome.NOT_COMPLETE, outcome());
        closed();
        assertEquals(Outcome.NOT_COMPLETE, outcome());
    }

    @Test
    void allPassedConformsBeforeAndAfterClosing() {
        confirmed(Answer.YES).measured("47.990");
        assertEquals(Outcome.CONFORMS, outcome());
        closed();
        assertEquals(Outcome.CONFORMS, outcome());
    }

    @Test
    void outWithoutConcessionDoesNotConform() {
        confirmed(Answer.YES).measured("47.970");
        assertEquals(Outcome.DOES_NOT_CONFORM, outcome());
        disposed(2, Disposition.USE_AS_IS);
        assertEquals(Outcome.CONFORMS_WITH_CONCESSIONS, outcome());
        assertEquals(1, bench.sheet().concessions());
    }

    @Test
    void whatCanBeCutAgainIsNotCompleteUntilTheRunIsClosed() {
        confirmed(Answer.YES).measured("48.010");
        assertEquals(Outcome.NOT_COMPLETE, outcome());
        closed();
        assertEquals(Outcome.DOES_NOT_CONFORM, outcome());
    }

    @Test
    void scrappedNeverConforms() {
        confirmed(Answer.YES).measured("47.970");
        disposed(2, Disposition.SCRAP);
        assertEquals(Outcome.DOES_NOT_CONFORM, outcome());
        assertTrue(bench.sheet().scrapped());
    }

    @Test
    void anUnsettledSetUpKeepsAConformingPartNotComplete() {
        measured("47.990");
        assertEquals(Outcome.NOT_COMPLETE, outcome());
        confirmed(Answer.NO);
        assertEquals(Outcome.NOT_COMPLETE, outcome());
    }

    @Test
    void aSetUpCarriedOnIsNoConcession() {
        confirmed(Answer.NO).measured("47.990");
        disposed(1, Disposition.CARRY_ON);
        assertEquals(Outcome.CONFORMS, outcome());
        assertEquals(0, bench.sheet().concessions());
        assertEquals(1, bench.sheet().carriedOn(StepClass.SET_UP));
    }

    @Test
    void aSetUpThatPassedAfterAllWasNotCarriedOn() {
        confirmed(Answer.NO).measured("47.990");
        disposed(1, Disposition.CARRY_ON);
        confirmed(Answer.YES);
        assertEquals(0, bench.sheet().carriedOn(StepClass.SET_UP));
    }

    @Test
    void aCharacteristicCannotBeCarriedOn() {
        confirmed(Answer.YES).measured("47.970");
        disposed(2, Disposition.CARRY_ON);
        assertEquals(Outcome.DOES_NOT_CONFORM, outcome());
        assertFalse(bench.sheet().line(2).settled());
    }

    @Test
    void aSetUpOfAnOlderRunUsedAsItIsCountsAsCarriedOn() {
        confirmed(Answer.NO).measured("47.990");
        disposed(1, Disposition.USE_AS_IS);
        assertEquals(Outcome.CONFORMS, outcome());
        assertEquals(1, bench.sheet().carriedOn(StepClass.SET_UP));
    }

    @Test
    void onlyCharacteristicsAreCounted() {
        confirmed(Answer.YES).measured("47.990");
        assertEquals(1, bench.sheet().characteristics().size());
        assertEquals(1, bench.sheet().count(org.tenthwise.model.verdict.VerdictKind.PASS));
    }

    @Test
    void aPlanWithoutACharacteristicNeverConforms() {
        Bench onlySetUp = new Bench()
                .step(new AskedCheck.Confirm("gripped"))
                .did(new StepEvent.Answered(1, Question.CONFIRMED, Answer.YES));
        assertEquals(Outcome.NOT_COMPLETE, onlySetUp.sheet().outcome());
    }

    @Test
    void anEntryOfANewerReleaseKeepsItFromConforming() {
        confirmed(Answer.YES).measured("47.990");
        bench.did(new Event.Unknown("recut", "{}"));
        assertEquals(Outcome.NOT_COMPLETE, outcome());
    }

    @Test
    void runOutThatThePlanDoesNotClassIsACharacteristic() {
        Bench trued = new Bench().step(runOut("0.02", 4, "0", "90", "180", "270"));
        assertEquals(StepClass.DRAWING, trued.sheet().line(1).step().stepClass());
    }

    @Test
    void whatIsSignedAgainstDoesNotPassForAConformingPart() {
        confirmed(Answer.YES).measured("47.990");
        assertTrue(bench.sheet().conformsUncontested());
        bench.did(new Event.Closed("Inspector 1", SignedAs.NOT_ACCEPTED));
        assertEquals(Outcome.CONFORMS, outcome());
        assertFalse(bench.sheet().conformsUncontested());
        assertEquals(1, bench.sheet().against().size());
    }

    @Test
    void onlyWhatSpeaksAgainstThePartIsToldAsAgainstIt() {
        confirmed(Answer.YES).measured("47.990");
        bench.did(new Event.Signed("Setter 1", SignedAs.MACHINED_AND_MEASURED))
                .did(new Event.Signed("Inspector 2", SignedAs.NOT_ACCEPTED))
                .did(new Event.Signed("Inspector 1", SignedAs.ACCEPTED));
        assertEquals(
                List.of("Inspector 2"),
                bench.sheet().against().stream().map(Signature::signedBy).toList());
    }
}
