package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.text.Advice;
import org.tenthwise.app.text.Remarks;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.verdict.VerdictKind;

/** A wall, worked out of an outside at two places, a bore and the run-out of the bore; nothing is taken at it. */
class CalculatedScreenTest extends WallAtHand {

    @Test
    void whileAnInputIsOpenItSaysWhichAndTheKeyGoesThere() throws Exception {
        run.session.goTo(4);
        assertEquals(VerdictKind.OPEN, standing());
        assertEquals("Waits for check 1.", new Sentences(words).distance(finding()));
        RunViewModel model = atOnce();
        model.press();
        assertEquals(1, run.session.state().inHand().number());
    }

    @Test
    void nothingThatIsTypedOrSentIsTakenThere() throws Exception {
        read("40.020");
        RunViewModel model = atOnce();
        int before = run.session.state().sheet().run().entries().size();
        sends(model, "5.00\n");
        model.touched("5");
        assertEquals(before, run.session.state().sheet().run().entries().size());
        assertFalse(run.session.again(Why.MEASURED_AGAIN).objection().isEmpty());
    }

    @Test
    void whereBothEndsLieInsideItPasses() throws Exception {
        read("40.020");
        assertEquals(VerdictKind.PASS, standing());
        assertEquals("4.960 to 5.030", new Sentences(words).value(finding()));
        assertEquals(
                "(od − id) ÷ 2 + e = (50.000…50.020 − 40.020) ÷ 2 + (±0.030)", new Sentences(words).asked(finding()));
        assertTrue(new Remarks(words)
                .of(finding())
                .contains("Worst case: od is check 1: 50.000…50.020, id is check 2: 40.020, e is half the run-out "
                        + "of check 3, to either side: ±0.030."));
    }

    @Test
    void whereOneEndLiesOutTheKeyAndTheWordsLeadToTheCheckThatDrivesIt() throws Exception {
        read("40.050");
        run.session.goTo(2);
        run.session.again(Why.MEASURED_AGAIN);
        run.enter("40.080");
        run.session.goTo(4);
        assertEquals(VerdictKind.FAIL, standing());
        assertEquals(
                List.of("Stop cutting here. Measure check 2 again. If it stays out, it needs a disposition."),
                List.of(new Advice(words).next(run.session.state().line())));
        assertTrue(finding().proposal().isEmpty());
        atOnce().press();
        assertEquals(2, run.session.state().inHand().number());
    }

    private Finding finding() {
        return run.session.state().line().finding();
    }

    private VerdictKind standing() {
        return finding().verdict().standing();
    }
}
