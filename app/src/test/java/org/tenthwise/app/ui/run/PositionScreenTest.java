package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.model.verdict.VerdictKind;

/** Two bores, and where they lie, read at both ends. All figures by hand. */
class PositionScreenTest extends RunAtHand {

    static final String BORES_THEN_THEIR_PLACES =
            """
            [[step]]
            number = 1
            operation = 10
            kind = "bore"
            name = "Bores 10"
            method = "Inside micrometer."
            lower = 10.00
            upper = 10.10
            places = ["A", "B"]
            gauge_kind = "inside-micrometer"
            gauge = "IM-1"

            [[step]]
            number = 2
            operation = 10
            kind = "position"
            name = "Position of the bores"
            method = "Depth micrometer over a pin, from both datum faces."
            zone = 0.10
            modifier = "mmc"
            size_step = 1
            holes = [{ name = "A", x = 20, y = 15 }, { name = "B", x = 20, y = -15 }]
            ends = ["entry", "exit"]
            gauge_kind = "depth-micrometer"
            gauge = "DM-1"
            """;

    @BeforeEach
    void begin() throws Exception {
        beginARunOf(InventedPlans.inMillimetres(BORES_THEN_THEIR_PLACES));
    }

    private void read(String... readings) throws Exception {
        run.session.goTo(2);
        run.enter(readings);
    }

    private VerdictKind standing() {
        return run.session.state().line().finding().verdict().standing();
    }

    @Test
    void beforeItsFirstReadingItHoldsEverywhere() throws Exception {
        run.enter("10.03", "10.05");
        run.session.goTo(2);
        seen("run", "run-position-open", this::screen);
    }

    @Test
    void whereItPassesItHoldsEverywhere() throws Exception {
        run.enter("10.03", "10.05");
        read("20.03", "15.04", "20.02", "15.03", "20.01", "-15", "20.065", "-15");
        assertEquals(VerdictKind.PASS, standing());
        seen("run", "run-position-pass", this::screen);
    }

    @Test
    void whereItFailsItHoldsEverywhere() throws Exception {
        run.enter("10.03", "10.05");
        read("20.03", "15.04", "20.06", "15.05", "20.01", "-15", "20.065", "-15");
        assertEquals(VerdictKind.FAIL, standing());
        seen("run", "run-position-fail", this::screen);
    }

    @Test
    void whileTheSizeCanChangeItWaitsForIt() throws Exception {
        run.enter("10.03");
        read("20", "15", "20", "15", "20", "-15", "20", "-15");
        assertEquals(VerdictKind.OPEN, standing());
        seen("run", "run-position-waits", this::screen);
    }
}
