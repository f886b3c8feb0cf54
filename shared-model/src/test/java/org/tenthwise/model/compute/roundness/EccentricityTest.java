package org.tenthwise.model.compute.roundness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** 3-4-5 triangles and the cosine of 45 and 60 degrees, by hand. */
class EccentricityTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    private static Eccentricity off(String cosPart, String sinPart) {
        return new Eccentricity(mm(cosPart), mm(sinPart));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # towards 0°, towards 90°, amount, high at
        0.030,  0.040,  0.050, 53.130102
        -0.030, 0.040,  0.050, 126.869898
        -0.030, -0.040, 0.050, 233.130102
        0.030,  -0.040, 0.050, 306.869898
        0.020,  0,      0.020, 0
        0,      -0.020, 0.020, 270
        # work that runs true
        0,      0,      0,     0
        """)
    void itHasAnAmountAndASide(String cosPart, String sinPart, String amount, String degrees) {
        assertEquals(mm(amount), off(cosPart, sinPart).amount());
        assertEquals(degrees, off(cosPart, sinPart).highAtDegrees().toPlainString());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # degrees, part of −0.030 towards 0° and 0.040 towards 90°
        0,   -0.030
        90,  0.040
        180, 0.030
        -90, -0.040
        # 0.070 cos 45°
        135, 0.049497
        315, -0.049497
        """)
    void towardsAnAngleItIsThePartThatANeedleThereSees(String degrees, String part) {
        assertEquals(mm(part), off("-0.030", "0.040").towards(new BigDecimal(degrees)));
    }

    /** 0.016001 cos 60° = 0.0080005 lies between two nanometres, and opposite the last bit of the cosine is another. */
    @ParameterizedTest
    @ValueSource(strings = {"60", "120", "240", "300"})
    void towardsTwoOppositeAnglesItIsOneFigureWithTwoSigns(BigDecimal degrees) {
        Eccentricity off = off("0.016001", "0");
        assertEquals(
                off.towards(degrees),
                off.towards(degrees.add(new BigDecimal("180"))).negated());
    }

    @Test
    void halfWayToAnotherIsTheMiddleOfTheParts() {
        assertEquals(off("0.010", "0.030"), off("0.030", "0.040").halfWayTo(off("-0.010", "0.020")));
    }

    @Test
    void whatIsLeftWithoutAnotherIsTheDifferenceOfTheParts() {
        assertEquals(off("-0.030", "0.040"), off("-0.020", "0.042").minus(off("0.010", "0.002")));
    }
}
