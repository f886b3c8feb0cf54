package org.tenthwise.model.compute.roundness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.List;
import java.util.NoSuchElementException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class FullIndicatorMovementTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # constructed from the definition, greatest less least
        5;-1;-4,                              9
        0.021;0.034;0.018;-0.006;-0.019;0.007, 0.053
        8.66;9.659;5;-2.588;-8.66;-9.659,     19.318
        # Fixturlaser, Dial Indicator Alignment: Bar Sag Still Exists in 2018!, mynewsdesk.com, 19 November 2018: 0
        # above,
        # -37 below; half of their movement is the 18.5 printed there
        0;-37,                                37
        """)
    void movementIsGreatestLessLeast(String readings, String movement) {
        assertEquals(
                mm(movement),
                FullIndicatorMovement.of(Arrays.stream(readings.split(";"))
                        .map(FullIndicatorMovementTest::mm)
                        .toList()));
    }

    @Test
    void oneReadingOrEqualReadingsDoNotMove() {
        assertEquals(Length.ZERO, FullIndicatorMovement.of(List.of(mm("0.02"))));
        assertEquals(Length.ZERO, FullIndicatorMovement.of(List.of(mm("0.02"), mm("0.020"))));
        assertThrows(NoSuchElementException.class, () -> FullIndicatorMovement.of(List.of()));
    }
}
