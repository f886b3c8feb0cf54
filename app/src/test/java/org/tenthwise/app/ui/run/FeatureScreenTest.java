package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.text.Advice;
import org.tenthwise.model.verdict.VerdictKind;

/** Sizes of features that are no kind by themselves: a thickness, a length, a chamfer, a radius. */
class FeatureScreenTest extends RunAtHand {

    static final String FEATURES =
            """
            [[step]]
            number = 1
            operation = 10
            kind = "size"
            feature = "thickness"
            name = "Flange 8"
            drawing = "8 −0.02"
            method = "Over both faces."
            lower = 7.980
            upper = 8.000
            places = ["front", "back"]
            cut_again = "too big"
            gauge_kind = "disc-micrometer"
            gauge = "DM-1"

            [[step]]
            number = 2
            operation = 10
            kind = "size"
            feature = "length"
            name = "Shoulder to shoulder 24"
            method = "Between the shoulders."
            lower = 23.9
            upper = 24.1
            places = ["middle"]
            gauge_kind = "caliper"
            gauge = "CA-1"

            [[step]]
            number = 3
            operation = 10
            kind = "size"
            feature = "chamfer"
            name = "Chamfer 1 × 45°"
            method = "Along the face."
            lower = 0.8
            upper = 1.2
            places = ["mouth"]
            gauge_kind = "chamfer-gauge"
            gauge = "CG-1"

            [[step]]
            number = 4
            operation = 10
            kind = "size"
            feature = "radius"
            name = "Radius R6"
            method = "Gauge square to the edge, against the light."
            lower = 5.5
            upper = 6.5
            places = ["edge"]
            gauge_kind = "radius-gauge"
            gauge = "RG-1"
            """;

    @BeforeEach
    void begin() throws Exception {
        beginARunOf(InventedPlans.inMillimetres(FEATURES));
    }

    /** 8.036 less the middle of 7.98 and 8.00; the register that counts diameters has no say in it. */
    @Test
    void aThicknessThatIsTooBigIsCutAgainByWhatComesOffInAll() throws Exception {
        run.enter("8.038", "8.034");
        assertEquals(VerdictKind.CUT_AGAIN, standing());
        assertEquals(
                "0.046 mm still to come off in all.",
                new Advice(words).next(run.session.state().line()));
        seen("run", "run-thickness-cut-again", this::screen);
    }

    /** 7.97 has no metal left, though a slot of that width would have. */
    @Test
    void aThicknessThatIsTooSmallIsNot() throws Exception {
        run.enter("7.970");
        assertEquals(VerdictKind.FAIL, standing());
        assertEquals(Optional.empty(), run.session.state().line().finding().proposal());
    }

    /** Which way it is out does not tell where metal is left. */
    @Test
    void aLengthOfNoSideIsOutEitherWayAndNoCutIsNamed() throws Exception {
        for (String out : new String[] {"23.85", "24.15"}) {
            beginARunOf(InventedPlans.inMillimetres(FEATURES));
            run.session.goTo(2);
            run.enter(out);
            assertEquals(VerdictKind.FAIL, standing());
            assertEquals(Optional.empty(), run.session.state().line().finding().proposal());
            assertEquals(
                    "Stop cutting here and measure again. If it stays out, it needs a disposition.",
                    new Advice(words).next(run.session.state().line()));
        }
        seen("run", "run-length-fail", this::screen);
    }

    @Test
    void aChamferBeforeItsReadingHoldsEverywhere() throws Exception {
        run.session.goTo(3);
        seen("run", "run-chamfer-open", this::screen);
    }

    @Test
    void aRadiusThatPassesHoldsEverywhere() throws Exception {
        run.session.goTo(4);
        run.enter("6.2");
        assertEquals(VerdictKind.PASS, standing());
        seen("run", "run-radius-pass", this::screen);
    }

    private VerdictKind standing() {
        return run.session.state().line().finding().verdict().standing();
    }
}
