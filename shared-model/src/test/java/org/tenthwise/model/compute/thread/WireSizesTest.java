package org.tenthwise.model.compute.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;

class WireSizesTest {

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # published, inches: Machinery's Handbook, 31st ed., p. 2135, wires for Acme threads, lead angle below 5 degrees
        1,   0.51645, 0.65001, 0.48726
        1.5, 0.34430, 0.43334, 0.32484
        2.5, 0.20658, 0.26001, 0.19491
        4,   0.12911, 0.16250, 0.12182
        6,   0.08608, 0.10834, 0.08121
        10,  0.05164, 0.06500, 0.04873
        14,  0.03689, 0.04643, 0.03480
        """)
    void wiresForTwentyNineDegreesAreTheOnesListed(String tpi, double best, double greatest, double least) {
        WireSizes sizes = WireSizes.of(LeadAngleTest.inches(ThreadForm.ACME, "5", tpi, 1));
        // the last printed digit: some are cut off, not rounded
        assertEquals(best, inches(sizes.best()), 0.00001);
        assertEquals(greatest, inches(sizes.greatest()), 0.00001);
        assertEquals(least, inches(sizes.least()), 0.00001);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # per pitch; 60 and 29 degrees published: ASME B1.2 and Machinery's Handbook, 31st ed., pp. 2127 and 2135;
        # stub form and 30 degrees constructed from the geometry of the basic form
        UNIFIED,     0.577350, 0.505182, 1.010363
        METRIC,      0.577350, 0.505182, 1.010363
        ACME,        0.516450, 0.487263, 0.650013
        STUB_ACME,   0.516450, 0.447214, 0.596588
        TRAPEZOIDAL, 0.517638, 0.486466, 0.656339
        """)
    void eachFormHasItsOwnWindow(ThreadForm form, double best, double least, double greatest) {
        Length pitch = Length.of("1", Unit.MILLIMETRE);
        WireSizes sizes = WireSizes.of(new ScrewThread(form, Length.of("20", Unit.MILLIMETRE), pitch, 1));
        assertEquals(best, sizes.best().millimetres().doubleValue(), 0.0000011);
        assertEquals(least, sizes.least().millimetres().doubleValue(), 0.0000011);
        assertEquals(greatest, sizes.greatest().millimetres().doubleValue(), 0.0000011);
    }

    /**
     * Published: US Army Ordnance, correspondence course OD1645, three-wire paragraph, armyordnance.tpub.com, read
     * November 2026: 0.072 in for 8 threads to the inch of 60°.
     */
    @Test
    void eightThreadsToTheInchTakeASeventyTwoThouWire() {
        assertEquals(
                0.072,
                inches(WireSizes.of(LeadAngleTest.inches(ThreadForm.UNIFIED, "1", "8", 1))
                        .best()),
                0.0005);
    }

    private static double inches(Length length) {
        return length.in(Unit.INCH).doubleValue();
    }
}
