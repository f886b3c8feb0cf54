package org.tenthwise.model.compute.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;

class WireSeatTest {

    /** So large that the lead angle is 0.01°. */
    private static final ScrewThread LARGE = new ScrewThread(ThreadForm.ACME, mm("2000"), mm("1"), 1);

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    private static MeasurementOverWires over(String wire) {
        return new MeasurementOverWires(Groove.of(LARGE), mm(wire), LARGE.basicPitchDiameter());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # published window of a 29° thread of pitch 1: 0.487263 to 0.650013, Machinery's Handbook, 31st ed., p. 2135
        0.3,     BELOW_THE_CREST
        0.48726, BELOW_THE_CREST
        0.48727, ON_THE_FLANKS
        0.51645, ON_THE_FLANKS
        0.65001, ON_THE_FLANKS
        0.65002, ON_THE_CRESTS
        3000,    ON_THE_CRESTS
        """)
    void aWireLiesOnTheFlanksInsideTheWindowOnly(String wire, WireSeat seat) {
        assertEquals(seat, over(wire).seat(LARGE.basicPitchDiameter(), LARGE.diameter()));
    }

    /** By hand: 1999.5 + (0.65 · cos 14.5° − 0.5) / tan 14.5° = 1999.999951. */
    @Test
    void theFlanksAreTouchedNearTheCrestByAThickWire() {
        assertEquals(
                1999.99995,
                over("0.65").contact(LARGE.basicPitchDiameter()).millimetres().doubleValue(),
                0.00001);
    }
}
