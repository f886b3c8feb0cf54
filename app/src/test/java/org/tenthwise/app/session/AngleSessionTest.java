package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.bench.Prefill;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * Two invented angles of a part in inches that says how warm the shop gets: in degrees and minutes, and in decimals.
 */
class AngleSessionTest extends RunBegun {

    AngleSessionTest() {
        super(
                InventedPlans.inInches(
                        """
                [[step]]
                number = 1
                operation = 10
                kind = "angle"
                name = "Flank 50°"
                method = "Bevel protractor."
                nominal = "50°"
                plus_minus = "0°30'"
                guard_band = "0°05'"
                places = ["front", "back"]
                gauge_kind = "bevel-protractor"
                gauge = "BP-1"
                clamping = "clamped"

                [[step]]
                number = 2
                operation = 10
                kind = "angle"
                name = "Face 88.5°"
                method = "Sine bar on blocks."
                lower = 88.00
                upper = 89.00
                places = ["middle"]
                gauge_kind = "sine-bar"
                gauge = "SB-1"
                clamping = "clamped"

                [temperature]
                degrees = "F"
                part_expansion = 6.4
                shop_least = 50
                shop_greatest = 95
                """));
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '|',
            textBlock =
                    """
            # step, typed,   kept as
            1, 50,         50°
            1, 50°,        50°
            1, 50.25°,     50.25°
            1, 50°5,       50°5′
            1, 50°05',     50°05′
            1, +50°05',    +50°05′
            1, 50° 05′,    50°05′
            1, 50°0'30",   50°0′30″
            2, 88.5,       88.5°
            2, 88°30',     88°30′
            """)
    void anAngleIsKeptAsItWasTyped(int step, String typed, String kept) throws Exception {
        session.goTo(step);
        enter(typed);
        assertEquals(
                List.of(kept),
                session.state().pass().readings().stream()
                        .map(reading -> reading.typed().toString())
                        .toList());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "50.5",
                "50.30",
                "50 30",
                "50'",
                "50°60'",
                "50°75'",
                "50°10'60",
                "50°30\"",
                "50°C",
                "50 °F",
                "50°5.5'5",
                "1000°",
                "5e1",
                ""
            })
    void whatIsNoAngleIsNotTaken(String typed) throws Exception {
        assertEquals(Objection.Kind.NOT_A_NUMBER, refused(session.enter(typed)));
        assertEquals(Objection.Kind.NOT_A_NUMBER, refused(session.keep(typed)));
    }

    /** An inch or a millimetre is no angle, whatever is pressed to switch between them. */
    @ParameterizedTest
    @ValueSource(strings = {"in", "mm"})
    void aLengthIsNotTakenForAnAngle(Unit unit) throws Exception {
        assertEquals(Objection.Kind.NOT_A_NUMBER, refused(session.enter("50", unit)));
        assertEquals(Objection.Kind.NOT_A_NUMBER, refused(session.keep("50", unit)));
    }

    @ParameterizedTest
    @CsvSource({"0,NOT_ABOVE_ZERO", "0°0',NOT_ABOVE_ZERO", "-0°05',NOT_ABOVE_ZERO", "-50°,NOT_ABOVE_ZERO"})
    void noAngleIsZeroOrLess(String typed, Objection.Kind why) throws Exception {
        assertEquals(why, refused(session.enter(typed)));
        assertEquals(why, refused(session.keep(typed)));
    }

    /** 90° − 50° and 180° − 50°, minutes without degrees, a turn and more; 180° − 88.5° of the face. */
    @ParameterizedTest
    @CsvSource({
        "1,40,40°,50°00′",
        "1,130°,130°,50°00′",
        "1,0°50,0°50′,50°00′",
        "1,390°,390°,50°00′",
        "2,91.5,91.5°,88.50°",
        "2,1°30',1°30′,88.50°"
    })
    void theOtherSideOfTheProtractorIsAskedAboutAndProvesNothing(int step, String typed, String read, String about)
            throws Exception {
        session.goTo(step);
        Objection why = session.enter(typed).objection().orElseThrow();
        assertEquals(List.of(Objection.Kind.FAR_OFF, read, about), List.of(why.kind(), why.detail(), why.expected()));
        taken(session.keep(typed));
        assertFalse(finding().farOff().isEmpty());
        assertFalse(standing() == VerdictKind.PASS, standing()::toString);
    }

    @Test
    void nothingIsAskedButTheReadingsAndNothingIsCut() throws Exception {
        enter("50°20'", "50°36'");
        assertEquals(VerdictKind.FAIL, standing());
        assertEquals(Optional.empty(), finding().warmth());
        assertFalse(session.state().mayCutOnThese());
        assertEquals(Map.of(), Prefill.of(session.state()).filled());
        assertEquals(Optional.empty(), Prefill.of(session.state()).fitting());
    }

    /** 50°26′ lies in the guard band of 5′ inside 50°30′; 50°25′ is its end. */
    @Test
    void aReadingStruckOutOrTakenAgainIsJudgedAnewAndADoubtChangesNothing() throws Exception {
        enter("50°20'", "50°26'");
        assertEquals(VerdictKind.UNPROVEN, standing());
        long last = session.state().pass().readings().get(1).entry().seq();
        taken(session.strikeOut(last, "The lock slipped"));
        assertEquals(VerdictKind.OPEN, standing());
        enter("50°25'");
        assertEquals(VerdictKind.PASS, standing());
        taken(session.flagDoubt("Which side?"));
        assertEquals(VerdictKind.PASS, standing());
        taken(session.again(Why.MEASURED_AGAIN));
        assertEquals(VerdictKind.OPEN, standing());
        enter("50°36'", "50°00'");
        assertEquals(VerdictKind.FAIL, standing());
    }
}
