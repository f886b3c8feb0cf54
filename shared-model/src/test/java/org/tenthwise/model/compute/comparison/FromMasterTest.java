package org.tenthwise.model.compute.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class FromMasterTest {

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # published: B. Chacos, How to read a dial bore gauge, pakden.com, read November 2026: set at 2.000, needle
        # .007 the other way
        INCH,       2.000,   RISES_WITH_SIZE, -0.007,  0,      1.993
        # the same bore on a dial that counts on as the plunger goes in
        INCH,       2.000,   FALLS_WITH_SIZE, 0.007,   0,      1.993
        # constructed from the formula (common practice; model l = l_s + d of JCGM 100, H.1)
        MILLIMETRE, 12.7000, FALLS_WITH_SIZE, -0.0045, -0.001, 12.7035
        MILLIMETRE, 40.0016, RISES_WITH_SIZE, 0.009,   0.002,  40.0086
        """)
    void sizeIsTheCertifiedSizeAndWhatTheGaugeShowsBesides(
            Unit unit, String certified, ReadingDirection sense, String reading, String zero, String size) {
        assertEquals(
                Length.of(size, unit),
                FromMaster.size(Length.of(certified, unit), sense, Length.of(reading, unit), Length.of(zero, unit)));
    }

    @Test
    void theReadingOnTheMasterGivesTheMaster() {
        Length certified = Length.of("35.0012", Unit.MILLIMETRE);
        Length zero = Length.of("-0.003", Unit.MILLIMETRE);
        for (ReadingDirection sense : ReadingDirection.values()) {
            assertEquals(certified, FromMaster.size(certified, sense, zero, zero));
        }
    }

    @Test
    void correctionTurnsItsSignWithTheSense() {
        Length reading = Length.of("0.009", Unit.MILLIMETRE);
        Length zero = Length.of("0.002", Unit.MILLIMETRE);
        assertEquals(
                Length.of("0.007", Unit.MILLIMETRE),
                FromMaster.correction(ReadingDirection.RISES_WITH_SIZE, reading, zero));
        assertEquals(
                Length.of("-0.007", Unit.MILLIMETRE),
                FromMaster.correction(ReadingDirection.FALLS_WITH_SIZE, reading, zero));
    }
}
