package org.tenthwise.model.compute.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;

class RootClearanceTest {

    @Test
    void clearanceIsOnRadiusAndExact() {
        // by hand: 30.5 / 2 - 2.5 - 25 / 2
        assertEquals(
                Length.of("0.25", Unit.MILLIMETRE),
                RootClearance.of(
                        Length.of("30.5", Unit.MILLIMETRE),
                        Length.of("2.5", Unit.MILLIMETRE),
                        Length.of("25", Unit.MILLIMETRE)));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # diameter, threads to the inch, greatest pitch and minor diameter, clearance with the best wire; inches
        # constructed: class 2G limits of ASME B1.8 (allowance of B1.5, k = 0.020), the wire in the groove by geometry
        STUB_ACME, 0.5, 10, 0.4643, 0.4200, 0.0030
        STUB_ACME, 1,   5,  0.9320, 0.8600, -0.0023
        ACME,      1,   5,  0.8920, 0.7800, 0.0178
        """)
    void theBestWireMayRestOnTheRootOfAStubThread(
            ThreadForm form,
            String diameter,
            String tpi,
            String pitchDiameter,
            String minorDiameter,
            double clearance) {
        ScrewThread thread = LeadAngleTest.inches(form, diameter, tpi, 1);
        Length wire = WireSizes.of(thread).best();
        Length over = new MeasurementOverWires(thread, wire).overWires(Length.of(pitchDiameter, Unit.INCH));
        assertEquals(
                clearance,
                RootClearance.of(over, wire, Length.of(minorDiameter, Unit.INCH))
                        .in(Unit.INCH)
                        .doubleValue(),
                0.0001);
    }
}
