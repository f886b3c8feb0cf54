package org.tenthwise.model.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One degree is 60 minutes and 3600 seconds of arc: ISO 80000-3, from memory. */
class AnglesTest {

    private static Length seconds(String figure) {
        return Length.of(figure, Unit.SECOND_OF_ARC);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # typed,          stays,            unit,          seconds of arc by hand
            29.5°,            29.5,             °,             106200
            30,               30,               °,             108000
            29°30',           29°30′,           ° ′,           106200
            29°30,            29°30′,           ° ′,           106200
            29° 30′,          29°30′,           ° ′,           106200
            29°5.5',          29°5.5′,          ° ′,           104730
            '29°59''59.5"',   29°59′59.5″,      ° ′ ″,         107999.5
            29°00′01,         29°00′01″,        ° ′ ″,         104401
            -0°30',           -0°30′,           ° ′,           -1800
            """)
    void anAngleStaysAsItWasTypedAndIsExactInSeconds(String typed, String stays, Unit unit, String seconds) {
        Written written = Written.typed(typed, Unit.MINUTE_OF_ARC).orElseThrow();
        assertEquals(new Written(stays, unit), written);
        assertEquals(seconds(seconds), written.length());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "30.10",
                "29°60'",
                "29°10'60",
                "29°-5'",
                "29'",
                "1000°0'",
                "29°5'5'5",
                "29°.5'",
                "",
                "°",
                "29°30'x"
            })
    void whatCouldBeMeantForAnotherAngleIsNone(String typed) {
        assertEquals(Optional.empty(), Written.typed(typed, Unit.MINUTE_OF_ARC));
    }

    @Test
    void decimalsNeedNoMarkWhereNothingElseIsExpected() {
        assertEquals(Optional.of(new Written("30.10", Unit.DEGREE)), Written.typed("30.10", Unit.DEGREE));
    }

    @Test
    void aLengthHasNoMarks() {
        assertEquals(Optional.empty(), Written.typed("29°30'", Unit.MILLIMETRE));
        assertThrows(IllegalArgumentException.class, () -> new Written("29°30′", Unit.DEGREE));
        assertThrows(IllegalArgumentException.class, () -> new Written("29.5", Unit.MINUTE_OF_ARC));
        assertThrows(IllegalArgumentException.class, () -> new Written("29°30′", Unit.SECOND_OF_ARC));
    }

    @ParameterizedTest
    @CsvSource({
        "1770,° ′,29°30′",
        "1745.50,° ′,29°05.50′",
        "-5,° ′,-0°05′",
        "1.8E+3,° ′,30°00′",
        "107999.5,° ′ ″,29°59′59.5″",
        "3600,° ′ ″,1°00′00″",
        "29.50,°,29.50"
    })
    void aFigureIsWrittenWithItsMarks(BigDecimal figure, Unit unit, String text) {
        assertEquals(text, unit.text(figure));
        assertEquals(0, Written.of(figure, unit).figure().compareTo(figure));
    }

    @Test
    void aThirdOfADegreeIsExactInMinutes() {
        Length angle = new Written("30°20′", Unit.MINUTE_OF_ARC).length();
        assertEquals(seconds("109200"), angle);
        assertEquals(new BigDecimal("30.333333333333"), angle.in(Unit.DEGREE));
        assertEquals("30°20′", new Written("30°20′", Unit.MINUTE_OF_ARC).toString());
        assertEquals("30.5°", new Written("30.5", Unit.DEGREE).toString());
        assertEquals(new Written("31°00′", Unit.MINUTE_OF_ARC), new Written("31", Unit.DEGREE).in(Unit.MINUTE_OF_ARC));
    }

    @Test
    void degreesAndMinutesOfTheSameAngleAreEqual() {
        assertEquals(new Written("29.5", Unit.DEGREE).length(), new Written("29°30′", Unit.MINUTE_OF_ARC).length());
        assertTrue(new Written("29°29′59.999″", Unit.SECOND_OF_ARC)
                .length()
                .isBelow(new Written("29.5", Unit.DEGREE).length()));
    }

    @Test
    void aLengthAndAnAngleAreNeverMixed() {
        Length length = Length.of("1", Unit.MILLIMETRE);
        Length angle = seconds("1");
        assertThrows(IllegalArgumentException.class, () -> length.plus(angle));
        assertThrows(IllegalArgumentException.class, () -> angle.minus(length));
        assertThrows(IllegalArgumentException.class, () -> length.compareTo(angle));
        assertThrows(IllegalArgumentException.class, () -> angle.isAbove(Length.ZERO));
        assertThrows(IllegalArgumentException.class, () -> angle.in(Unit.MILLIMETRE));
        assertThrows(IllegalArgumentException.class, () -> length.in(Unit.DEGREE));
        assertThrows(IllegalArgumentException.class, angle::millimetres);
        assertThrows(IllegalArgumentException.class, () -> Length.mean(List.of(length, angle)));
        assertThrows(IllegalArgumentException.class, () -> Nanometres.of(angle));
        assertTrue(!Length.ZERO.equals(angle.zero()));
    }

    /** log10 of 25.4 is 1.4, of 60 it is 1.8, of 3600 it is 3.6; arithmetic. */
    @ParameterizedTest
    @CsvSource({"in,mm,2", "mm,in,-1", "°,° ′,2", "°,° ′ ″,4", "° ′,°,-1", "° ′ ″,° ′ ″,0"})
    void aCoarserUnitNeedsMorePlaces(Unit unit, Unit other, int places) {
        assertEquals(places, unit.placesMoreThan(other));
    }
}
