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

class CutStateTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # limits 24.980 and 24.993; common practice, boundaries first
        DIAMETER, 24.993,   IN_SIZE
        DIAMETER, 24.980,   IN_SIZE
        DIAMETER, 24.99301, CUT_AGAIN
        DIAMETER, 24.97999, PAST_SIZE
        BORE,     24.993,   IN_SIZE
        BORE,     24.980,   IN_SIZE
        BORE,     24.99301, PAST_SIZE
        BORE,     24.97999, CUT_AGAIN
        WIDTH,    24.9,     CUT_AGAIN
        DEPTH,    25.1,     PAST_SIZE
        """)
    void aSizeOnALimitIsInAndMetalLeftCanStillBeCut(
            @ConvertWith(FeatureNamed.class) Feature feature, String measured, CutState state) {
        assertEquals(state, CutState.of(feature, mm("24.980"), mm("24.993"), mm(measured)));
    }

    @Test
    void limitsTheWrongWayRoundAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> CutState.of(Feature.BORE, mm("2"), mm("1"), mm("1.5")));
    }
}
