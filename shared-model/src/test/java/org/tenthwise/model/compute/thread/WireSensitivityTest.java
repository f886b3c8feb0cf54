package org.tenthwise.model.compute.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;

class WireSensitivityTest {

    private static Length in(String figure) {
        return Length.of(figure, Unit.INCH);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # published: the factors of the three-wire formulas, Machinery's Handbook, 31st ed., pp. 2127 and 2134;
        # 15 degrees by hand, 1 + 1 / 0.258819 and 1 / (2 x 0.267949)
        UNIFIED,     -3.000000, 0.866025
        ACME,        -4.993929, 1.933357
        TRAPEZOIDAL, -4.863703, 1.866025
        """)
    void wireAndPitchGoInByTheFactorsOfTheFormula(ThreadForm form, double byWire, double byPitch) {
        WireSensitivity sensitivity =
                new WireSensitivity(Groove.of(LeadAngleTest.inches(form, "1", "5", 1)), in("0.11"));
        assertEquals(byWire, sensitivity.byWire(), 0.000001);
        assertEquals(byPitch, sensitivity.byPitch(), 0.000001);
    }

    /** By hand: √(57.74² + (4.9939 · 11.55)²) µin = 81.61 µin, and with 10 µin of the pitch 83.87 µin. */
    @Test
    void theRootOfTheSquaresIsTheUncertainty() {
        WireSensitivity acme =
                new WireSensitivity(Groove.of(LeadAngleTest.inches(ThreadForm.ACME, "1", "5", 1)), in("0.10329"));
        assertEquals(
                81.61e-6,
                acme.standard(in("0.00005774"), in("0.00001155"), Length.ZERO)
                        .in(Unit.INCH)
                        .doubleValue(),
                0.03e-6);
        assertEquals(
                83.87e-6,
                acme.standard(in("0.00005774"), in("0.00001155"), in("0.00001"))
                        .in(Unit.INCH)
                        .doubleValue(),
                0.03e-6);
        assertEquals(Length.ZERO, acme.standard(Length.ZERO, Length.ZERO, Length.ZERO));
        assertThrows(IllegalArgumentException.class, () -> acme.standard(Length.ZERO, in("-0.001"), Length.ZERO));
    }

    /** A wire 0.01 in over the best: 0.01 · cos 14.5° / sin² 14.5° · π / 180 = 0.002695 in for a degree, by hand. */
    @Test
    void theBestWireDoesNotMindTheHalfAngle() {
        ScrewThread thread = LeadAngleTest.inches(ThreadForm.ACME, "1", "5", 1);
        Length best = WireSizes.of(thread).best();
        assertEquals(
                0,
                new WireSensitivity(Groove.of(thread), best)
                        .byHalfAngle()
                        .millimetres()
                        .doubleValue(),
                0.000001);
        assertEquals(
                0.002695,
                new WireSensitivity(Groove.of(thread), best.plus(in("0.01")))
                        .byHalfAngle()
                        .in(Unit.INCH)
                        .doubleValue(),
                0.000001);
    }
}
