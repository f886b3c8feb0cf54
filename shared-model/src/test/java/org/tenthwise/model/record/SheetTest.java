package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.NoSuchElementException;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.verdict.VerdictKind;

/** Three looks, the second of them a hold point. */
class SheetTest {

    private final Bench bench = new Bench();

    @BeforeEach
    void threeLooks() {
        bench.step(new AskedCheck.VisualCheck("a"))
                .step(new AskedCheck.VisualCheck("b"), 2)
                .step(new AskedCheck.VisualCheck("c"));
    }

    @Test
    void theFirstOpenStepIsNeitherSettledNorHeld() {
        assertEquals(Optional.of(1), firstOpen());
        answer(1, Answer.YES);
        assertEquals(Optional.of(2), firstOpen());
        answer(2, Answer.NO);
        assertEquals(Optional.of(2), firstOpen(), "what failed is not settled");
        bench.did(new StepEvent.DispositionSigned(2, Disposition.USE_AS_IS, "will do", "Inspector 1"));
        assertEquals(Optional.of(3), firstOpen());
        answer(3, Answer.YES);
        assertEquals(Optional.empty(), firstOpen());
    }

    @Test
    void whatIsHeldIsNotOpen() {
        answer(1, Answer.YES);
        answer(2, Answer.NO);
        assertTrue(bench.sheet().line(3).held());
        assertFalse(bench.sheet().line(1).held());
    }

    @Test
    void verdictsAreCounted() {
        answer(1, Answer.YES);
        answer(2, Answer.NO);
        Sheet sheet = bench.sheet();
        assertEquals(1, sheet.count(VerdictKind.PASS));
        assertEquals(1, sheet.count(VerdictKind.FAIL));
        assertEquals(1, sheet.count(VerdictKind.OPEN));
        assertEquals(0, sheet.count(VerdictKind.UNPROVEN));
    }

    @Test
    void onlyWhatDidNotPassIsCountedAsConceded() {
        answer(1, Answer.YES);
        bench.did(new StepEvent.DispositionSigned(1, Disposition.USE_AS_IS, "will do", "Inspector 1"));
        assertEquals(0, bench.sheet().concessions());
        answer(2, Answer.NO);
        bench.did(new StepEvent.DispositionSigned(2, Disposition.USE_AS_IS, "will do", "Inspector 1"));
        assertEquals(1, bench.sheet().concessions());
    }

    @Test
    void aPartIsScrappedByOneSignatureThatHolds() {
        assertFalse(bench.sheet().scrapped());
        answer(1, Answer.NO);
        bench.did(new StepEvent.DispositionSigned(1, Disposition.SCRAP, "past size", "Inspector 1"));
        assertTrue(bench.sheet().scrapped());
        answer(1, Answer.YES);
        assertFalse(bench.sheet().scrapped(), "it was signed for another finding");
    }

    @Test
    void aStepThatIsNotInThePlanHasNoLine() {
        assertThrows(NoSuchElementException.class, () -> bench.sheet().line(4));
    }

    private Optional<Integer> firstOpen() {
        return bench.sheet().firstOpen().map(Step::number);
    }

    private void answer(int step, Answer answer) {
        bench.did(new StepEvent.Answered(step, Question.LOOKS_RIGHT, answer));
    }
}
