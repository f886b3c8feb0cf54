package org.tenthwise.model.compute.zone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class ToleranceZoneTest {

    static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    private static ZoneLimits at(String zone, String nominal) {
        return ToleranceZone.read(zone).of(mm(nominal));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # published limits: Shigley's Mechanical Engineering Design, 9th ed., Example 7-7, 34H11/c11
        H11,  34,   0.160,   0
        c11,  34,   -0.120,  -0.280
        # published: JIS B 0401 (1999); shafts Sumitomo Electric, cutting tool catalogue, References,
        # docs.steelcam.org/sumitomo,
        # page 28; hole Miki Pulley, Technical data, mikipulley.co.jp, Tech_data/tech08.html; read November 2026
        js6,  30,   0.0065,  -0.0065
        E8,   180,  0.148,   0.085
        s6,   65,   0.072,   0.053
        u6,   6,    0.031,   0.023
        e9,   3,    -0.014,  -0.039
        # published: Housing and Shaft tolerances and resultant fits; J6 SKF, table 8; the others germany-bearing.com,
        # pages
        # article/s66, s67, s70 and s74; read November 2026
        J6,   50,   0.010,   -0.006
        J7,   120,  0.022,   -0.013
        K5,   10,   0.001,   -0.005
        K7,   150,  0.012,   -0.028
        M6,   250,  -0.008,  -0.037
        M7,   50,   0,       -0.025
        N6,   18,   -0.009,  -0.020
        P6,   315,  -0.047,  -0.079
        r6,   225,  0.109,   0.080
        JS5,  120,  0.0075,  -0.0075
        # published: ISO 286-2:1988, Technical Corrigendum 1:2006
        A13,  355,  2.090,   1.200
        E8,   120,  0.126,   0.072
        R10,  30,   -0.028,  -0.112
        f9,   315,  -0.056,  -0.186
        # from memory, ISO 286-2:2010: the exceptions of the footnotes
        M6,   251,  -0.009,  -0.041
        M6,   315,  -0.009,  -0.041
        M6,   316,  -0.010,  -0.046
        N9,   2,    -0.004,  -0.029
        N9,   8,    0,       -0.036
        N11,  3.01, 0,       -0.075
        K9,   3,    0,       -0.025
        M9,   8,    -0.006,  -0.042
        k8,   50,   0.039,   0
        k3,   50,   0.004,   0
        j5,   10,   0.004,   -0.002
        j7,   80,   0.018,   -0.012
        J8,   30,   0.020,   -0.013
        P8,   30,   -0.022,  -0.055
        P9,   30,   -0.022,  -0.074
        ZC7,  3,    -0.060,  -0.070
        h01,  18,   0,       -0.0005
        """)
    void deviationsAreTheOnesListed(String zone, String nominal, String upper, String lower) {
        assertEquals(new ZoneLimits(mm(nominal), mm(upper), mm(lower)), at(zone, nominal));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # over 30 up to and including 50; and 24 splits the step over 18 up to 30 for u
        H7, 30,     0.021
        H7, 30.001, 0.025
        H7, 50,     0.025
        u6, 24,     0.054
        u6, 24.01,  0.061
        H7, 0.8,    0.010
        H7, 500,    0.063
        """)
    void sizeOnAnEdgeBelongsToTheStepBelow(String zone, String nominal, String upper) {
        assertEquals(mm(upper), at(zone, nominal).upper());
    }

    @Test
    void limitsAreNominalAndDeviation() {
        ZoneLimits zone = at("g6", "20");
        assertEquals(mm("19.993"), zone.greatest());
        assertEquals(mm("19.980"), zone.least());
        assertEquals(mm("0.013"), zone.width());
        assertThrows(IllegalArgumentException.class, () -> new ZoneLimits(mm("20"), mm("-0.02"), mm("-0.01")));
    }

    @Test
    void halvesOfAnOddWidthAreKept() {
        assertEquals(mm("0.0105"), at("js7", "20").upper());
        assertEquals(mm("-0.0105"), at("JS7", "20").lower());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # published: footnote of Table 15.2, Narayana, Kannaiah and Venkata Reddy, Machine Drawing, 3rd ed.: grades 7
        # to 11, odd widths
        js7,  20, true
        JS9,  8,  false
        JS8,  30, true
        js6,  30, false
        js13, 20, false
        h7,   20, false
        """)
    void drawingMayRoundOddWidthsOfGradesSevenToEleven(String zone, String nominal, boolean may) {
        assertEquals(may, ToleranceZone.read(zone).mayBeRoundedDown(mm(nominal)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "", "7", "H", "H19", "H007", "H7/g6", "i7", "I7", "L6", "o6", "q6", "W6", "Js7", "zD6", "h 6", "hh6",
                "H-7", "h7.5"
            })
    void whatIsNoZoneIsRefusedByItsName(String name) {
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, () -> ToleranceZone.read(name));
        assertTrue(refusal.getMessage().contains(" is not a "), refusal::getMessage);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        a11  | 1      | over 1 mm
        B9   | 0.5    | over 1 mm
        H14  | 1      | over 1 mm
        js15 | 0.9    | over 1 mm
        N9   | 1      | over 1 mm
        t7   | 24     | over 24 up to 500
        v6   | 14     | over 14 up to 500
        Y7   | 18     | over 18 up to 500
        cd6  | 10.001 | up to 10
        EF8  | 20     | up to 10
        fg5  | 11     | up to 10
        j8   | 3.5    | up to 3
        j4   | 10     | grades 5 to 8
        J5   | 10     | grades 6 to 8
        K9   | 3.1    | grades 3 to 8
        P2   | 10     | grades 3 to 8
        H7   | 0      | at most 500 mm
        H7   | -3     | at most 500 mm
        h7   | 500.1  | at most 500 mm
        k8   | 600    | at most 500 mm
        """)
    void zoneNotTabulatedIsRefusedWithTheReason(String zone, String nominal, String reason) {
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, () -> at(zone, nominal));
        assertTrue(refusal.getMessage().contains(reason), refusal::getMessage);
    }

    @Test
    void capitalIsHoleAndSmallIsShaft() {
        assertTrue(ToleranceZone.read("ZA6").isHole());
        assertEquals("za6", ToleranceZone.read("za6").toString());
        assertEquals(new ToleranceZone("h", Grade.IT01), ToleranceZone.read("h01"));
    }
}
