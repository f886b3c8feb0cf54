package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.Objection;
import org.tenthwise.app.text.Remarks;
import org.tenthwise.model.verdict.VerdictKind;

/** Two bores read by radius and angle from the axis of the work. All figures by hand. */
class PolarPositionScreenTest extends RunAtHand {

    static final String BORES_BY_ANGLE =
            """
            [[step]]
            number = 1
            operation = 10
            kind = "position"
            name = "Position of the bores"
            method = "Zeroed on the axis of the centre bore, +X through the slot."
            zone = 0.10
            read = "polar"
            holes = [{ name = "A", radius = 25, angle = 90 }, { name = "B", radius = 20, angle = 0 }]
            ends = ["entry", "exit"]
            gauge_kind = "coordinate-machine"
            gauge = "CM-1"
            uncertainty = "probe"
            uncertainty_of_angle = "head"

            [[uncertainty]]
            name = "probe"
            expanded = 0.004

            [[uncertainty]]
            name = "head"
            expanded = "0°01'"
            """;

    @BeforeEach
    void begin() throws Exception {
        beginARunOf(InventedPlans.inMillimetres(BORES_BY_ANGLE));
    }

    private VerdictKind standing() {
        return run.session.state().line().finding().verdict().standing();
    }

    private String pad() {
        return run.session.state().unit().symbol();
    }

    @Test
    void theAngleIsAskedInItsOwnUnitEverywhere() throws Exception {
        assertEquals("mm", pad());
        run.enter("25.02");
        assertEquals("°", pad());
        seen("run", "run-position-polar-angle", this::screen);
    }

    /** A leans 0.0218 to the side at its exit, B lies 0.01 out and 0.0349 before 0°. */
    @Test
    void whereItPassesItHoldsEverywhere() throws Exception {
        run.enter("25.02", "90", "25.01", "90.05", "20.01", "359.9", "20", "-0°03'");
        assertEquals(VerdictKind.PASS, standing());
        seen("run", "run-position-polar-pass", this::screen);
    }

    @Test
    void whereItFailsItHoldsEverywhere() throws Exception {
        run.enter("25.02", "90", "25.01", "90.05", "20.06", "0", "20", "0");
        assertEquals(VerdictKind.FAIL, standing());
        seen("run", "run-position-polar-fail", this::screen);
    }

    @Test
    void aRadiusBelowZeroIsRefusedAndAnAngleFarOffIsAskedAbout() throws Exception {
        assertEquals(Objection.Kind.NOT_ABOVE_ZERO, refused("-25"));
        assertEquals(Objection.Kind.FAR_OFF, refused("45.1"));
        run.enter("25", "90", "25");
        assertEquals(Objection.Kind.FAR_OFF, refused("200"));
        assertEquals(Objection.Kind.NOT_A_NUMBER, refused("90 mm"));
        assertEquals(List.of("25", "90", "25"), readings());
    }

    private Objection.Kind refused(String figure) throws Exception {
        return run.session.enter(figure).objection().map(Objection::kind).orElseThrow();
    }

    /** 1 mm at 25 is 2.29°: within that of the other hole, it was read there. */
    @Test
    void nothingPassesByAnAngleOfTheOtherHole() throws Exception {
        run.enter("25", "90", "25", "90", "20", "90", "20", "0");
        assertFalse(run.session.state().line().finding().verdict().passed());
        assertEquals(1, run.session.state().line().finding().farOff().size());
    }

    /** 20 · 1′ is 0.0058 to the side. */
    @Test
    void itIsSaidHowAnglesCountAndWhatTheirUncertaintyComesTo() throws Exception {
        run.enter("25", "90", "25", "90", "20.02", "0", "20.01", "0");
        List<String> remarks = new Remarks(words).of(run.session.state().line().finding());
        assertTrue(remarks.stream().anyMatch(said -> said.contains("0.005824 mm")), remarks::toString);
    }
}
