package org.tenthwise.app.sums.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.app.sums.Asking.at;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.Asking;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.quantity.Unit;

/** What is asked and how it is answered; the figures of the sources are run with the published cases. */
class WireConstantsSumTest {

    private final Asking sums = new Asking();

    /**
     * By hand for 30° and a pitch of 2 mm: 1 / cos 30° = 1.154701, 1 + 1 / sin 30° = 3, cot 30° / 2 = 0.866025,
     * 0.866025 · 2 = 1.732051.
     */
    @Test
    void aHalfAngleGivesWhatHangsOnNoCrest() {
        SumResult answer = sums.answer(Unit.MILLIMETRE, "wire-constants", "half_angle=30; pitch=2");
        assertEquals("1.154701", at(answer, "best_wire"));
        assertEquals("3.00000", at(answer, "wire_factor").substring(0, 7));
        assertEquals("0.866025", at(answer, "pitch_factor").substring(0, 8));
        assertEquals("1.732051", at(answer, "pitch_constant"));
        assertTrue(
                Asking.found(answer, "wire_least").isEmpty()
                        && Asking.found(answer, "wire_greatest").isEmpty(),
                answer::toString);
        assertEquals(
                "[wire_least and wire_greatest depend on the crest, which half_angle does not give: give form as well]",
                answer.notes().toString());
    }

    @Test
    void aFormWithTheSameFlanksGivesTheSameAndItsCrestToo() {
        SumResult metric = sums.answer(Unit.MILLIMETRE, "wire-constants", "form=metric; pitch=2");
        SumResult flanks = sums.answer(Unit.MILLIMETRE, "wire-constants", "half_angle=30; pitch=2");
        for (String key : new String[] {"best_wire", "wire_factor", "pitch_factor", "pitch_constant"}) {
            assertEquals(at(metric, key), at(flanks, key), key);
        }
        assertTrue(
                Asking.found(metric, "wire_least").isPresent()
                        && Asking.found(metric, "wire_greatest").isPresent()
                        && metric.notes().isEmpty(),
                metric::toString);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            half_angle=30          | pitch is missing: give it, or tpi
            pitch=2                | form is missing: give it, or half_angle
            half_angle=90; pitch=2 | half_angle is 90: it must be less than 90 degrees
            """)
    void whatIsMissingIsNamed(String given, String words) {
        assertEquals(
                words,
                sums.problem(Unit.MILLIMETRE, "wire-constants", given).why().toString());
    }

    @Test
    void aPitchDiameterNoWireTouchesAtIsBlamed() {
        assertTrue(sums.problem(Unit.MILLIMETRE, "wire-constants", "form=metric; pitch=1e20; pitch_diameter=3")
                .why()
                .toString()
                .startsWith("pitch_diameter is 3: No wire touches the flanks at lead 100000000000000000000 mm"));
    }
}
