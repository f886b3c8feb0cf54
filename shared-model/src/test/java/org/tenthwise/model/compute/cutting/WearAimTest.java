package org.tenthwise.model.compute.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.converter.ConvertWith;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.FeatureNamed;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class WearAimTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # common practice: three standard deviations before the limit; limits 60 and 60.046, U 0.004, by hand
        BORE,     0.003, 60.033, 60.013, 0.020
        DIAMETER, 0.003, 60.013, 60.033, 0.020
        # 3 x 0.006333 + 0.004 is just half of the tolerance
        BORE,     0.006333333, 60.023000001, 60.022999999, 0.000000002
        """)
    void bothEndsKeepTheirDistanceFromTheLimits(
            @ConvertWith(FeatureNamed.class) Feature feature,
            String deviation,
            String start,
            String reset,
            String room) {
        assertEquals(
                new WearAim(mm(start), mm(reset), mm(room)),
                WearAim.of(feature, mm("60"), mm("60.046"), mm(deviation), mm("0.004")));
    }

    @Test
    void theWholeToleranceIsRoomWhereNothingSpreads() {
        assertEquals(
                mm("0.046"),
                WearAim.of(Feature.BORE, mm("60"), mm("60.046"), Length.ZERO, Length.ZERO)
                        .room());
    }

    @Test
    void whereTheEndsMeetThereIsNoAim() {
        assertThrows(
                IllegalArgumentException.class,
                () -> WearAim.of(Feature.BORE, mm("60"), mm("60.046"), mm("0.007"), mm("0.004")));
        assertThrows(
                IllegalArgumentException.class,
                () -> WearAim.of(Feature.BORE, mm("60"), mm("60.046"), mm("-0.001"), mm("0.004")));
    }
}
