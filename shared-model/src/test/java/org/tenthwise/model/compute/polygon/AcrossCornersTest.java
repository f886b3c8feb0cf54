package org.tenthwise.model.compute.polygon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** The published figures are run with the published cases. */
class AcrossCornersTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    /** By hand: 24 · √2, 24 · 2/√3, 24 / cos 22.5°. */
    @ParameterizedTest
    @CsvSource({"4, 33.941125", "6, 27.712813", "8, 25.977413"})
    void flatsFaceEachOther(int sides, String corners) {
        assertEquals(mm(corners), AcrossCorners.of(sides, mm("24")));
    }

    @ParameterizedTest
    @CsvSource({"3, 24", "5, 24", "2, 24", "0, 24", "6, 0"})
    void whatHasNoFlatsIsRefused(int sides, String flats) {
        assertThrows(IllegalArgumentException.class, () -> AcrossCorners.of(sides, mm(flats)));
    }
}
