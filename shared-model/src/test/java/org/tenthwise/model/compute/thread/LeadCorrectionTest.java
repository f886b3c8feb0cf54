package org.tenthwise.model.compute.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;

class LeadCorrectionTest {

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # published rule: Machinery's Handbook, 31st ed., pp. 2127 and 2134, single-start threads of 60 degrees do
        # without,
        # Acme threads do not; the amounts by hand from c = W/2 tan² B cos A cot A with the best wire, inches
        UNIFIED,   0.25, 20,  0.0001159,  false
        UNIFIED,   1,    8,   0.0001015,  false
        UNIFIED,   2,    4.5, 0.0001398,  false
        ACME,      1,    5,   0.0009674,  true
        ACME,      0.75, 6,   0.0010203,  true
        ACME,      0.25, 16,  0.0004997,  true
        STUB_ACME, 1.5,  8,   0.0000894,  false
        STUB_ACME, 2.5,  8,   0.0000316,  false
        """)
    void correctionMattersAboveFifteenHundredThousandthsOfAnInch(
            ThreadForm form, String diameter, String tpi, double correction, boolean matters) {
        ScrewThread thread = LeadAngleTest.inches(form, diameter, tpi, 1);
        Length found = LeadCorrection.of(Groove.of(thread), WireSizes.of(thread).best(), thread.basicPitchDiameter());
        assertEquals(correction, found.in(Unit.INCH).doubleValue(), 0.0000001);
        assertEquals(matters, LeadCorrection.matters(found));
    }

    @Test
    void onTheThresholdTheSimpleFormulaStillDoes() {
        assertFalse(LeadCorrection.matters(Length.of("0.00015", Unit.INCH)));
        assertTrue(LeadCorrection.matters(Length.of("0.0001500001", Unit.INCH)));
    }

    @Test
    void noPitchDiameterHasNoCorrection() {
        Groove groove = Groove.of(LeadAngleTest.inches(ThreadForm.ACME, "1", "5", 1));
        assertThrows(
                IllegalArgumentException.class,
                () -> LeadCorrection.of(groove, Length.of("0.1", Unit.INCH), Length.ZERO));
    }
}
