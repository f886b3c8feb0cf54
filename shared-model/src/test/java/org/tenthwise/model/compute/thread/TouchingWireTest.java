package org.tenthwise.model.compute.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.quantity.Unit;

class TouchingWireTest {

    private static final Length PITCH = Length.of("1", Unit.MILLIMETRE);

    /** Both columns as published: Machinery's Handbook, 31st ed., p. 2136. */
    @ParameterizedTest
    @CsvFileSource(resources = "large-lead-29.csv", useHeadersInDisplayName = true)
    void wiresForLargeLeadAnglesAreTheOnesListed(
            int starts, double leadAngle, double bestWire, double overLessPitchDiameter) {
        Length pitchDiameter = Nanometres.round(starts / (Math.PI * Math.tan(Math.toRadians(leadAngle))));
        TouchingWire wire =
                TouchingWire.of(new Groove(new BigDecimal("14.5"), PITCH, PITCH.half(), starts), pitchDiameter);
        assertEquals(bestWire, wire.diameter().millimetres().doubleValue(), 0.00004);
        assertEquals(
                overLessPitchDiameter,
                wire.overLessPitchDiameter().millimetres().doubleValue(),
                0.00004);
    }

    /** 0.5 / cos 30° and 3 · 0.577350 − 0.866025 by hand, with a lead of next to nothing. */
    @Test
    void withoutALeadItIsTheBestWire() {
        TouchingWire wire = TouchingWire.of(
                new Groove(new BigDecimal("30"), PITCH, PITCH.half(), 1), Length.of("3000", Unit.MILLIMETRE));
        assertEquals(0.577350, wire.diameter().millimetres().doubleValue(), 0.000001);
        assertEquals(0.866025, wire.overLessPitchDiameter().millimetres().doubleValue(), 0.000002);
    }

    @Test
    void noPitchDiameterHasNoWire() {
        Groove groove = new Groove(new BigDecimal("15"), PITCH, PITCH.half(), 1);
        assertThrows(IllegalArgumentException.class, () -> TouchingWire.of(groove, Length.ZERO));
    }
}
