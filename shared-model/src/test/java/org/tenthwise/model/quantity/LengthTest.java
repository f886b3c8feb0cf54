package org.tenthwise.model.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.NoSuchElementException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    private static Length inch(String figure) {
        return Length.of(figure, Unit.INCH);
    }

    /** One inch is 25.4 mm exactly: published, international yard and pound agreement of 1959. */
    @Test
    void anInchIsExactlyTwentyFivePointFourMillimetres() {
        assertEquals(mm("25.4"), inch("1"));
        assertEquals(mm("0.00254"), inch("0.0001"));
    }

    @Test
    void trailingZerosMakeNoDifference() {
        assertEquals(mm("25.4"), mm("25.4000"));
        assertEquals(mm("25.4").hashCode(), mm("25.4000").hashCode());
        assertEquals(mm("100"), mm("1E+2"));
        assertEquals(Length.ZERO, mm("-0.000"));
    }

    @Test
    void tenthsAddUpWithoutAnError() {
        assertEquals(mm("0.3"), mm("0.1").plus(mm("0.2")));
        assertEquals(mm("-0.1"), mm("0.2").minus(mm("0.3")));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # there and back through millimetres changes nothing of a figure, however many places it has; arithmetic
        1.3125
        0.0001
        -0.00005
        39.370078740157
        0.00000000000001
        -1.00000000000000000005
        0.0000000000000000000000000000000000000000000000000000000025
        """)
    void inchesComeBackAsTheyWereWritten(String figure) {
        assertEquals(new BigDecimal(figure), inch(figure).in(Unit.INCH));
    }

    /** 1 mm is 5/127 in, which never ends: 0.039 370 078 740 157… */
    @Test
    void aMillimetreInInchesIsHeldToTwelvePlaces() {
        assertEquals(new BigDecimal("0.03937007874"), mm("1").in(Unit.INCH));
        assertEquals(new BigDecimal("0.03937007874"), mm("1.000000000000001").in(Unit.INCH));
    }

    @Test
    void millimetresComeBackToTheLastPlaceHoweverMany() {
        assertEquals(new BigDecimal("0.00050000000002"), mm("0.00050000000002").in(Unit.MILLIMETRE));
    }

    @Test
    void aFigureIsHandedOutWithoutTrailingZerosOrExponent() {
        assertEquals("100", mm("100.00").in(Unit.MILLIMETRE).toPlainString());
        assertEquals("0", Length.ZERO.in(Unit.INCH).toPlainString());
        assertEquals("100 mm", mm("100").toString());
    }

    @Test
    void aQuotientIsHeldToAPicometreHalfEven() {
        assertEquals(mm("0.333333333333"), mm("1").dividedBy(BigDecimal.valueOf(3)));
        assertEquals(mm("0.666666666667"), mm("2").dividedBy(BigDecimal.valueOf(3)));
        assertEquals(mm("0.000000000002"), mm("0.000000000005").dividedBy(BigDecimal.valueOf(2)));
    }

    @Test
    void halfIsExactHoweverSmall() {
        assertEquals(mm("0.0000000000005"), mm("0.000000000001").half());
    }

    @Test
    void orderIsByValueAcrossUnits() {
        assertTrue(inch("1").isAbove(mm("25.3999999")));
        assertTrue(mm("25.3999999").isBelow(inch("1")));
        assertEquals(0, inch("1").compareTo(mm("25.40")));
    }

    @Test
    void meanGreatestAndLeastAreTakenOverTheWholeList() {
        List<Length> readings = List.of(mm("35.012"), mm("35.009"), mm("35.015"));
        assertEquals(mm("35.012"), Length.mean(readings));
        assertEquals(mm("35.015"), Length.greatest(readings));
        assertEquals(mm("35.009"), Length.least(readings));
    }

    @Test
    void nothingHasNoMeanAndNoGreatest() {
        assertEquals(
                "No lengths, so no mean",
                assertThrows(IllegalArgumentException.class, () -> Length.mean(List.of()))
                        .getMessage());
        assertThrows(NoSuchElementException.class, () -> Length.greatest(List.of()));
        assertThrows(NoSuchElementException.class, () -> Length.least(List.of()));
    }

    @Test
    void absAndNegatedTurnTheSignOnly() {
        assertEquals(mm("0.02"), mm("-0.02").abs());
        assertEquals(mm("-0.02"), mm("0.02").negated());
        assertEquals(-1, mm("-0.02").signum());
    }
}
