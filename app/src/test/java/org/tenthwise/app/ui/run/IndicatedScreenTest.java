package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.text.Remarks;
import org.tenthwise.app.ui.run.RunScreenState.Act;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.verdict.VerdictKind;

/** What an indicator shows over a sweep, at two places. Figures by hand. */
class IndicatedScreenTest extends RunAtHand {

    private static String plan(String of, String datumBy) {
        String datum = of.equals("flatness") ? "" : "datum = \"A\"\ndatum_by = \"%s\"\n".formatted(datumBy);
        return """
            [[step]]
            number = 1
            operation = 10
            kind = "indicated"
            movement_of = "%s"
            %slimit = 0.020
            name = "Movement to A"
            method = "Needle square to the surface."
            places = ["near", "far"]
            gauge_kind = "lever-indicator"
            gauge = "LI-1"
            """
                .formatted(of, datum);
    }

    @BeforeEach
    void begin() throws Exception {
        begin("circular-run-out", "centres");
    }

    private void begin(String of, String datumBy) throws Exception {
        beginARunOf(InventedPlans.inMillimetres(plan(of, datumBy)));
    }

    /**
     * Near it moves 0.008, far 0.012, and from the lowest near to the highest far, on a taper, 0.025. Where each place
     * is judged the greatest movement of one counts, where all are judged together the whole.
     */
    @ParameterizedTest
    @CsvSource({
        "circular-run-out, 0.012, PASS",
        "axial-run-out,    0.012, PASS",
        "symmetry,         0.012, PASS",
        "total-run-out,    0.025, FAIL",
        "squareness,       0.025, FAIL",
        "parallelism,      0.025, FAIL",
        "flatness,         0.025, FAIL"
    })
    void theGreatestMovementIsJudged(String of, String movement, VerdictKind verdict) throws Exception {
        begin(of, "centres");
        run.enter("0.003", "-0.005", "0.020", "0.008");
        assertEquals(
                Length.of(movement, Unit.MILLIMETRE),
                run.session.state().line().finding().value().orElseThrow());
        assertEquals(verdict, standing());
    }

    /** A limit is inside; a thousandth more is not. */
    @ParameterizedTest
    @CsvSource({"0.012, PASS", "0.013, FAIL"})
    void aMovementOnTheLimitPasses(String highest, VerdictKind verdict) throws Exception {
        run.enter("0.002", "0.000", highest, "-0.008");
        assertEquals(verdict, standing());
    }

    @Test
    void halfASweepProvesNothing() throws Exception {
        for (String next : List.of("0.003", "-0.005", "0.004")) {
            run.enter(next);
            assertEquals(VerdictKind.OPEN, standing());
        }
        run.enter("0.001");
        assertEquals(VerdictKind.PASS, standing());
    }

    @Test
    void jawsAreSaidToBeNoDatum() throws Exception {
        begin("circular-run-out", "chuck");
        run.enter("0.003", "-0.005", "0.004", "0.001");
        assertEquals(VerdictKind.UNPROVEN, standing());
        assertTrue(new Remarks(words)
                .of(run.session.state().line().finding())
                .contains("Held in jaws: it is read against the jaws, not against datum A."));
        assertEquals(Act.DISPOSE, atOnce().commitProperty().get().act());
        seen("run", "run-indicated-chuck", this::screen);
    }

    @Test
    void beforeItsReadingsItHoldsEverywhere() throws Exception {
        seen("run", "run-indicated-open", this::screen);
    }

    @Test
    void whereItFailsItHoldsEverywhere() throws Exception {
        begin("total-run-out", "v-blocks");
        run.enter("0.003", "-0.005", "0.020", "0.008");
        assertTrue(new Remarks(words)
                .of(run.session.state().line().finding())
                .contains("Proves the surface as far as it was swept, if the indicator was not zeroed again between"
                        + " the places; what its guide is out by is in it."));
        seen("run", "run-indicated-fail", this::screen);
    }

    private VerdictKind standing() {
        return run.session.state().line().finding().verdict().standing();
    }
}
