package org.tenthwise.model.compute.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;

class LeadAngleTest {

    static ScrewThread inches(ThreadForm form, String diameter, String threadsToTheInch, int starts) {
        return new ScrewThread(
                form,
                Length.of(diameter, Unit.INCH),
                Length.of("1", Unit.INCH).dividedBy(new BigDecimal(threadsToTheInch)),
                starts);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # form, diameter, threads to the inch, minutes, within (whole minutes are printed)
        # published: Machinery's Handbook, 27th ed., Table 3 of general purpose Acme threads
        ACME,      0.25,   16, 312, 0.55
        ACME,      0.375,  12, 273, 0.55
        ACME,      0.4375, 12, 230, 0.55
        ACME,      0.75,   6,  273, 0.55
        ACME,      0.875,  6,  230, 0.55
        # published: basic data of ASME/ANSI B1.8-1988, TorqBolt, Stub Acme thread dimensions, torqbolt.com, read
        # November 2026
        # its 4 degrees 54 minutes for 1/4-16 belong to 4 degrees 55 by its own pitch diameter
        STUB_ACME, 0.25,   16, 294, 1.05
        STUB_ACME, 0.375,  12, 260, 0.55
        STUB_ACME, 0.5,    10, 232, 0.55
        STUB_ACME, 0.75,   6,  260, 0.55
        STUB_ACME, 1,      5,  232, 0.55
        STUB_ACME, 1.25,   5,  184, 0.55
        STUB_ACME, 1.5,    4,  192, 0.55
        STUB_ACME, 2,      4,  142, 0.55
        STUB_ACME, 2.5,    3,  152, 0.55
        STUB_ACME, 3,      2,  192, 0.55
        STUB_ACME, 4,      2,  142, 0.55
        """)
    void theAngleAtTheBasicPitchDiameterIsTheOneListed(
            ThreadForm form, String diameter, String tpi, double minutes, double within) {
        ScrewThread thread = inches(form, diameter, tpi, 1);
        assertEquals(
                minutes, LeadAngle.degrees(thread, thread.basicPitchDiameter()).doubleValue() * 60, within);
    }

    /**
     * Published: Machinery's Handbook, 31st ed., p. 2134, 5 threads to the inch, 4 starts, pitch diameter 1.0250 in.
     */
    @Test
    void severalStartsCountByTheLead() {
        assertEquals(
                13.952,
                LeadAngle.degrees(inches(ThreadForm.ACME, "1.125", "5", 4), Length.of("1.0250", Unit.INCH))
                        .doubleValue(),
                0.0005);
    }

    @Test
    void noPitchDiameterHasNoAngle() {
        assertEquals(
                "Pitch diameter 0 mm must be more than zero",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> LeadAngle.degrees(inches(ThreadForm.ACME, "1.125", "5", 4), Length.ZERO))
                        .getMessage());
    }
}
