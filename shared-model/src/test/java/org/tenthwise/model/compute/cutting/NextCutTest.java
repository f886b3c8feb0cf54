package org.tenthwise.model.compute.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.converter.ConvertWith;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.FeatureNamed;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class NextCutTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # feature, measured, aim, change on diameter, stock left
        # published: industrialmonitordirect.com, CNC tool offset direction guide, read November 2026, both with the
        # same sign
        DIAMETER, 50.1,   50,      -0.1,    0.1
        BORE,     50.1,   50,      -0.1,    0
        # common practice: aim less measured; 40 h9 aimed near its lower limit, 25 g6 aimed at its middle
        DIAMETER, 39.999, 39.951,  -0.048,  0.048
        DIAMETER, 25.312, 24.9865, -0.3255, 0.3255
        # common practice, metal still to come off
        BORE,     29.950, 30.010,  0.060,   0.060
        WIDTH,    7.98,   8.02,    0.04,    0.04
        DEPTH,    11.7,   12,      0.3,     0.3
        # past the aim: nothing comes off any more
        DIAMETER, 49.99,  50,      0.01,    0
        DEPTH,    12.1,   12,      -0.1,    0
        """)
    void changeIsAimLessMeasuredAndStockIsNeverBelowZero(
            @ConvertWith(FeatureNamed.class) Feature feature,
            String measured,
            String aim,
            String change,
            String stock) {
        NextCut cut = NextCut.of(feature, mm(measured), mm(aim));
        assertEquals(mm(aim), cut.aim());
        assertEquals(mm(change), cut.changeOnDiameter());
        assertEquals(mm(stock), cut.stockLeft());
        assertEquals(mm(change), cut.changeOnRadius().plus(cut.changeOnRadius()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"BORE", "WIDTH", "DIAMETER", "DEPTH"})
    void onTheAimNothingIsLeftToDo(@ConvertWith(FeatureNamed.class) Feature feature) {
        assertEquals(
                new NextCut(mm("30"), Length.ZERO, Length.ZERO, Length.ZERO),
                NextCut.of(feature, mm("30.000"), mm("30")));
    }
}
