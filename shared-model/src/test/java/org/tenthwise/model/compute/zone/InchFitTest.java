package org.tenthwise.model.compute.zone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.compute.fit.Clearance;
import org.tenthwise.model.compute.fit.FitKind;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class InchFitTest {

    private static Length inches(String figure) {
        return Length.of(figure, Unit.INCH);
    }

    private static Length thousandths(String figure) {
        return inches(figure).times(new BigDecimal("0.001"));
    }

    private static Clearance play(InchFit fit, Length basic) {
        ZoneLimits hole = fit.hole(basic);
        ZoneLimits shaft = fit.shaft(basic);
        return Clearance.of(List.of(hole.least(), hole.greatest()), List.of(shaft.least(), shaft.greatest()));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # published: Machinery's Handbook, 31st ed., Tables 8a, 10 and 12
        RC2, 4.73, 0.9,  -0.5, -1.1
        RC4, 1.5,  1.6,  -1,   -2
        RC4, 3.15, 1.8,  -1.2, -2.4
        LT1, 0.24, 0.5,  0.15, -0.15
        LN1, 0.1,  0.25, 0.45, 0.25
        LN3, 1.97, 1,    2,    1.4
        # published: Machinery's Handbook, 27th ed., Table 11, p. 663
        FN1, 0.5,  0.4,  0.8,  0.5
        FN2, 2,    1.2,  2.7,  2.0
        FN3, 1,    0.8,  2.1,  1.6
        FN4, 1.58, 1.0,  3.1,  2.5
        FN5, 3.15, 1.8,  7.2,  6.0
        """)
    void limitsAreTheOnesListed(InchFit fit, String basic, String hole, String shaftUpper, String shaftLower) {
        assertEquals(new ZoneLimits(inches(basic), thousandths(hole), Length.ZERO), fit.hole(inches(basic)));
        assertEquals(
                new ZoneLimits(inches(basic), thousandths(shaftUpper), thousandths(shaftLower)),
                fit.shaft(inches(basic)));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "inch-fits-printed.csv")
    void limitsComeToTheFitPrintedBesideThem(InchFit fit, String size, String first, String second) {
        Clearance play = play(fit, inches(size));
        Length one = thousandths(first);
        Length other = thousandths(second);
        boolean interference = fit.name().startsWith("LN") || fit.name().startsWith("FN");
        if (interference) {
            assertEquals(new Clearance(one.negated(), other.negated()), play);
        } else {
            assertEquals(new Clearance(other, fit.name().startsWith("LT") ? one.negated() : one), play);
        }
    }

    @ParameterizedTest
    @EnumSource(InchFit.class)
    void classIsOfItsKind(InchFit fit) {
        FitKind kind = play(fit, inches("2")).kind();
        switch (fit.name().substring(0, 2)) {
            case "RC", "LC" -> assertEquals(FitKind.CLEARANCE, kind);
            case "LT" -> assertEquals(FitKind.TRANSITION, kind);
            default -> assertEquals(FitKind.INTERFERENCE, kind);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"RC", "RC0", "RC10", "rc4", "FN6", "H7", "", "LC12"})
    void whatIsNoClassIsRefused(String name) {
        assertThrows(IllegalArgumentException.class, () -> InchFit.read(name));
        assertEquals(InchFit.RC4, InchFit.read("RC 4"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        LT3 | 0.24  | over 0.24 up to 19.69
        LT4 | 0.1   | over 0.24 up to 19.69
        FN3 | 0.95  | over 0.95 up to 19.69
        RC1 | 19.70 | up to and including 19.69
        RC1 | 0     | up to and including 19.69
        FN1 | -1    | up to and including 19.69
        """)
    void sizeWithoutSuchAFitIsRefusedWithTheReason(InchFit fit, String basic, String reason) {
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, () -> fit.hole(inches(basic)));
        assertTrue(refusal.getMessage().contains(reason), refusal::getMessage);
    }
}
