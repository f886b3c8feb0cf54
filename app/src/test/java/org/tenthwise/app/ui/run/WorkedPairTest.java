package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.text.Remarks;
import org.tenthwise.model.verdict.VerdictKind;

/** A taper over rollers at two places, of which each has a pair of readings. */
class WorkedPairTest extends RunAtHand {

    @BeforeEach
    void begin() throws Exception {
        beginARunOf(
                InventedPlans.inMillimetres(
                        """
                        [[step]]
                        number = 1
                        operation = 10
                        kind = "worked"
                        by = "rollers"
                        height = 40.000
                        end = "small-down"
                        name = "Taper 6"
                        method = "On the plate, then on the blocks."
                        nominal = 6
                        plus_minus = "0°05'"
                        places = ["0°", "90°"]
                        gauge_kind = "micrometer"
                        gauge = "MC-1"
                        """));
    }

    private VerdictKind standing() {
        return run.session.state().line().finding().verdict().standing();
    }

    @Test
    void halfAPairProvesNothing() throws Exception {
        for (String next : List.of("52.314", "56.508", "52.310")) {
            run.enter(next);
            assertEquals(VerdictKind.OPEN, standing());
        }
        run.enter("56.505");
        assertEquals(VerdictKind.PASS, standing());
    }

    /** The other end down at the second place: what the first came to is no pass, and neither figure is blamed. */
    @Test
    void readingsThatFitNoTaperSaySo() throws Exception {
        run.enter("52.314", "56.508", "56.508", "52.314");
        assertEquals(VerdictKind.UNPROVEN, standing());
        List<String> said = new Remarks(words).of(run.session.state().line().finding());
        assertTrue(said.get(0).startsWith("These readings fit no such work"), said::toString);
        assertTrue(said.stream().noneMatch(remark -> remark.contains("56.508")), said::toString);
        seen("run", "worked-rollers-refused", this::screen);
    }
}
