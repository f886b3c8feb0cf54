package org.tenthwise.model.compute.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.converter.ConvertWith;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.FeatureNamed;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class CutterWearTest {

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # common practice: half of the error for each wall, nearer with less
        WIDTH,    19.964, 20.025, -0.0305
        DIAMETER, 60.21,  59.985, -0.1125
        WIDTH,    20.03,  20.025, 0.0025
        DIAMETER, 59.985, 59.985, 0
        """)
    void halfOfTheErrorGoesIntoTheRadius(
            @ConvertWith(FeatureNamed.class) Feature feature, String measured, String target, String change) {
        assertEquals(
                Length.of(change, Unit.MILLIMETRE),
                CutterWear.change(feature, Length.of(measured, Unit.MILLIMETRE), Length.of(target, Unit.MILLIMETRE)));
    }
}
