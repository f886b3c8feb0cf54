package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.ui.run.RunScreenState.Act;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * What is said of a cut over wires, and by which key it is taken, where the root of the thread goes down with it: 16.5
 * at the least.
 */
class RootAndCutHandlingTest extends RunAtHand {

    @BeforeEach
    void ofAThread() throws Exception {
        beginARunOf(InventedPlans.ROOT_THEN_WIRES);
    }

    /** The root as it was measured, and one reading over wires. */
    private void read(String root, String overWires) throws Exception {
        run.enter(root);
        run.session.goOn();
        run.enter("1.443", overWires);
    }

    /** The depth of the groove is cut by the same tool, and nobody has read it. */
    @Test
    void withACutOverWiresTheDepthIsMeasuredBeforeAndAfter() throws Exception {
        beginARunOf(
                InventedPlans.inMillimetres(
                        """
                [[step]]
                number = 1
                operation = 10
                kind = "thread-over-wires"
                name = "M10 over wires"
                method = "Three wires."
                designation = "M10x1.5-6g"
                wire = 0.895
                minor_diameter = 8.3
                places = ["middle"]
                cut_again = "too big"
                gauge = "MW-1"

                [[step]]
                number = 2
                operation = 10
                kind = "depth"
                name = "Depth of thread"
                method = "Depth micrometer."
                lower = 0.85
                upper = 0.95
                places = ["middle"]
                gauge_kind = "depth-micrometer"
                wires_step = 1
                """));
        run.enter("0.895", "10.616");
        run.session.machine(Register.DIAMETER, Aim.ByLimits.MIDDLE);
        String next = atOnce().shownProperty().get().found().next();
        assertTrue(
                next.endsWith("The thread gets deeper with it: measure check 2 before this cut and after it."), next);
    }

    private static Act big(RunViewModel model) {
        return model.commitProperty().get().act();
    }

    /**
     * The form of the tool is off where the root is deep enough before the flanks are: 18.248 is 18.436 less 0.188, and
     * 16.55 less that 16.362.
     */
    @Test
    void noCutIsToldThatTakesTheRootOfAThreadUnderItsLimit() throws Exception {
        read("16.55", "20.600");
        String next = atOnce().shownProperty().get().found().next();
        assertTrue(
                next.matches("Do not cut with this tool: the root goes down with it, to 0\\.1\\d\\d mm under its lower "
                        + "limit\\. Check the form of the tool\\."),
                next);
    }

    /** The root passed as it was before the cut. */
    @Test
    void withACutOverWiresTheRootIsToBeMeasuredAgain() throws Exception {
        read("16.90", "20.600");
        run.session.machine(Register.DIAMETER, Aim.ByLimits.MIDDLE);
        String next = atOnce().shownProperty().get().found().next();
        assertTrue(next.endsWith("The root goes down with it: after the cut measure check 1 again as well."), next);
        run.session.again(Why.CUT);
        run.enter("20.400");
        RunScreenState.Found found = atOnce().shownProperty().get().found();
        assertEquals(VerdictKind.PASS, found.standing());
        String stale = "The root was measured before the last cut, which can take it down too: measure check 1 again.";
        assertEquals(stale, found.shown().get(0));
        run.session.goTo(1);
        run.session.again(Why.MEASURED_AGAIN);
        run.enter("16.70");
        run.session.goTo(2);
        run.enter("20.400");
        assertFalse(atOnce().shownProperty().get().found().shown().contains(stale));
    }

    /** By 0.100 on a root of 16.65, cut all the same: it is 16.55, and 0.084 more would leave 16.466. */
    @Test
    void aRootThatWasCutSinceItWasMeasuredIsMeasuredAgain() throws Exception {
        read("16.65", "20.600");
        run.session.machine(Register.DIAMETER, Aim.ByLimits.MIDDLE);
        run.session.again(Why.CUT);
        run.enter("20.500");
        String next = atOnce().shownProperty().get().found().next();
        assertTrue(
                next.matches("Do not cut with this tool: by what came off since the root was measured, it would go "
                        + "0\\.\\d\\d\\d mm under its lower limit\\."
                        + " Measure the root again: check 1\\."),
                next);
        seen("run", "root-cut-since", this::screen);
    }

    /**
     * The sentence says to look at the tool, or to measure the root; with another tool a cut may have been taken all
     * the same.
     */
    @Test
    void aCutThatIsAdvisedAgainstIsToldByALesserKey() throws Exception {
        read("16.65", "20.600");
        run.session.machine(Register.DIAMETER, Aim.ByLimits.MIDDLE);
        RunViewModel model = atOnce();
        assertEquals(Act.READ_AGAIN, big(model));
        assertEquals(
                "Cut taken",
                model.shownProperty().get().allowed().otherWay().orElseThrow().label());
        model.keepOrAgain();
        assertEquals(
                List.of(Optional.of(Why.CUT)),
                run.session.state().line().passes().stream()
                        .skip(1)
                        .map(pass -> pass.why())
                        .toList());
        run.enter("20.500");
        RunViewModel after = atOnce();
        assertEquals(Act.GO_TO, big(after));
        assertEquals(
                "Cut taken",
                after.shownProperty().get().allowed().otherWay().orElseThrow().label());
        after.press();
        assertEquals(1, run.session.state().inHand().number());
    }

    /** What nobody read before rework nobody can take off the root. */
    @Test
    void whereNobodyCanTellHowFarTheRootWentDownNoAmountIsTold() throws Exception {
        read("17.05", "20.600");
        long read = run.session.state().pass().readings().get(0).entry().seq();
        run.session.dispose(Disposition.REWORK, "Chase it", "Inspector 1", "");
        run.session.strikeOut(read, "chip under the wire");
        run.enter("20.500");
        assertEquals(
                "How far the root went down with the cuts since it was measured is not known. Measure "
                        + "it again before any cut: check 1.",
                atOnce().shownProperty().get().found().next());
    }

    /**
     * On a root of 17.15 a wire of 1.443 reads 17.15 + 2 · 1.443 = 20.036, and no less; in a thread in size it lies
     * clear of it.
     */
    @Test
    void whereNoLargerWireHelpsNoneIsAskedFor() throws Exception {
        read("17.15", "20.030");
        assertEquals(
                "The wire touches the root, although it clears it on a thread in size: the reading, "
                        + "the root or the thread is wrong. Measure the root again, then read again.",
                atOnce().shownProperty().get().found().next());
    }
}
