package org.tenthwise.model.compute.expression;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.words.Refused;

class ExpressionTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        # by hand
        a + b * 2                   | a = 1; b = 3            | 7
        (a + b) × 2                 | a = 1; b = 3            | 8
        a − b − c                   | a = 10; b = 3; c = 2    | 5
        a / b / c * d               | a = 12; b = 3; c = 2; d = 5 | 10
        -a^2                        | a = 3                   | -9
        (-a)^2                      | a = 3                   | 9
        2·a^3                       | a = 2                   | 16
        a − -b                      | a = 1; b = 2            | 3
        .5*a                        | a = 3                   | 1.5
        a + 0.1 + 0.2               | a = 0                   | 0.3
        min(a, b, 2) + max(a, b)    | a = 5; b = 1            | 6
        mean(a, b, c)               | a = 1; b = 2; c = 6     | 3
        mean(a)                     | a = 1 2 6               | 3
        max(a) − min(a)             | a = 20.001 20.004 19.999 | 0.005
        abs(a − b)                  | a = 1; b = 3.25         | 2.25
        sqrt(a*a + b*b)             | a = 3; b = 4            | 5
        sin(30) * a                 | a = 7                   | 3.5
        cos(a) + 1                  | a = 60                  | 1.5
        tan(a)                      | a = 45                  | 1
        asin(a)                     | a = 0.5                 | 30
        acos(a)                     | a = 0.5                 | 60
        atan(a)                     | a = 1                   | 45
        a + max(b, c) - min (b, c)  | a = 1; b = 2; c = 5     | 4
        Außen_Ø2 − e1               | Außen_Ø2 = 5; e1 = 1    | 4
        # Tolerance stack-up: a worked example, metricmech.com: housing 40, parts 25, 2 and 10
        h - b - s - c               | h = 40; b = 25; s = 2; c = 10 | 3
        """)
    void itIsWorkedOutAsItIsWritten(String text, String sizes, BigDecimal value) {
        Reach reach = Expression.of(text).over(Sized.of(sizes));
        assertEquals(0, value.compareTo(reach.value()), reach::toString);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        # calcady.com, Drill point geometry, worked example, read November 2026: through a plate of 1.000 with 1/2 in, 118°, 0.050 beyond: 1.200
        t + d / 2 / tan(59) + 0.05 | t = 1; d = 0.5 | 1.200
        # the same page: 118°, factor 0.300
        d / 2 / tan(118 / 2)       | d = 1          | 0.300
        # 90° factor 0.500
        d / 2 / tan(90 / 2)        | d = 1          | 0.500
        # calculator.city, drill point table: cotangent of 67.5°, 0.414
        1 / tan(a / 2)             | a = 135        | 0.414
        """)
    void publishedFiguresComeOut(String text, String sizes, BigDecimal published) {
        BigDecimal value = Expression.of(text).over(Sized.of(sizes)).value();
        assertEquals(
                0, value.subtract(published).abs().compareTo(new BigDecimal("0.0005")) <= 0 ? 0 : 1, value::toString);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        # wall: least (least OD − greatest ID) / 2 − greatest e, by hand
        (od − id) / 2 − e     | od = 50.00 50.02; id = 40.02 40.00; e = 0.02 0.03 | 4.960  | 4.990
        # a difference of one size with itself is nothing, whatever it is
        a − a + b             | a = 10 11; b = 1 2            | 1      | 2
        # the bottom lies between the ends
        a^2                   | a = -1 2                      | 0      | 4
        a*a − 2*a             | a = 0 3                       | -1     | 3
        # the top lies between the ends: 90° between 80° and 120°
        100*sin(a)            | a = 80 120                    | 86.602540378443900 | 100
        cos(a)                | a = 170 200                   | -1     | -0.939692620785908
        # the nearest of two ranges that overlap
        abs(a − b)            | a = 1 3; b = 2 4              | 0      | 3
        sqrt(x*x + y*y)       | x = -0.03 0.04; y = -0.01 0.03 | 0     | 0.05
        sqrt(x*x + y*y) − c   | x = 0; y = 0; c = 1 2         | -2     | -1
        a / (1 + a*a)         | a = 0.5 2                     | 0.4    | 0.5
        1 / (a*a − a + 1)     | a = 0 2                       | 0.333333333333333 | 1.333333333333333
        sqrt(25 − a*a)        | a = 3 5                       | 0      | 4
        asin(a / 5)           | a = 3 5                       | 36.869897645844 | 90
        acos(a / 5)           | a = 3 5                       | 0      | 53.130102354156
        a^3 − 3*a             | a = -2 2.1                    | -2     | 2.961
        """)
    void theLeastAndTheGreatestAreThoseOfTheWorstCaseBetweenTheEndsToo(
            String text, String sizes, BigDecimal least, BigDecimal greatest) {
        Reach reach = Expression.of(text).over(Sized.of(sizes));
        BigDecimal near = new BigDecimal("2e-9");
        assertTrue(reach.least().subtract(least).abs().compareTo(near) < 0, reach::toString);
        assertTrue(reach.greatest().subtract(greatest).abs().compareTo(near) < 0, reach::toString);
    }

    @Test
    void sumsAndProductsAreExactWherePlacesRunOn() {
        Reach reach = Expression.of("(od − id) / 2 − e")
                .over(Sized.of("od = 50.0000000001; id = 40.0000000003; e = 0.00000000004"));
        assertEquals(new BigDecimal("4.99999999986"), reach.value().stripTrailingZeros());
        assertEquals(reach.value(), reach.least());
        assertEquals(reach.value(), reach.greatest());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        ' '              | there is no expression
        a +              | it ends where
        a + )            | ")" at character 5
        (a + b           | the bracket at character 1 is not closed
        sin(a            | the bracket at character 4 is not closed
        a + b)           | the bracket at character 6 closes none
        2a               | "a" at character 2 stands where a sign
        a b              | "b" at character 3
        (a)(b)           | "(" at character 4
        (a, b)           | "," at character 3
        a × × b          | "×" at character 5
        a ÷              | it ends where
        1.2.3            | "1.2.3" at character 1 is not a decimal
        .                | "." at character 1
        a + 0,5          | "," at character 6
        1e3              | "e" at character 2
        foo(a)           | "foo" at character 1 is no function
        sqrt a           | behind sqrt at character 1 a bracket
        sin(a, b)        | sin at character 1 takes one value, not 2
        sin()            | ")" at character 5
        a^1              | behind ^ at character 3
        a^b              | behind ^ at character 3
        a^10             | behind ^ at character 3
        a^-2             | behind ^ at character 3
        a # b            | "#" at character 3
        a = b            | "=" at character 3
        pi(a)            | "(" at character 3
        12345678901234567890123456789012 | at character 1 is not a decimal
        """)
    void whatCannotBeReadIsRefusedAtItsPlace(String text, String words) {
        Refused refused = assertThrows(Refused.class, () -> Expression.of(text));
        assertTrue(refused.getMessage().contains(words), refused.getMessage());
    }

    @Test
    void whatIsTooLongOrTooDeepIsRefused() {
        assertTrue(assertThrows(Refused.class, () -> Expression.of("a + ".repeat(75) + "a"))
                .getMessage()
                .contains("it is 301 characters long, and may be 300"));
        assertTrue(assertThrows(Refused.class, () -> Expression.of("(".repeat(31) + "a" + ")".repeat(31)))
                .getMessage()
                .contains("more than 30 deep"));
        assertEquals(
                Set.of("a"),
                Expression.of("(".repeat(29) + "a" + ")".repeat(29)).names());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        1 / (a − b)       | a = 2; b = 2            | a − b can come to zero
        1 / (a − b)       | a = 1 3; b = 2 4        | a − b can come to zero
        a / 0             | a = 2                   | 0 can come to zero
        sqrt(a − b)       | a = 2; b = 3            | a − b can be less than zero
        sqrt(a − b)       | a = 2 4; b = 3          | a − b can be less than zero
        asin(a)           | a = 1.001               | a can lie outside −1 to 1
        acos(a)           | a = 0.5 1.001           | a can lie outside −1 to 1
        tan(a)            | a = 90                  | a can come to 90°
        tan(a)            | a = -270                | a can come to 90°
        tan(a)            | a = 80 100              | a can come to 90°
        ((a^9)^9)^9       | a = 1000                | is outside any range
        max(a, b) − min(a, b) | a = 1 3; b = 2 4    | could not be found
        """)
    void whatHasNoAnswerAnywhereInTheRangesIsRefused(String text, String sizes, String words) {
        Expression expression = Expression.of(text);
        Refused refused = assertThrows(Refused.class, () -> expression.over(Sized.of(sizes)));
        assertTrue(refused.getMessage().contains(words), refused.getMessage());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        a + b | a     | the name b in it stands for nothing
        a + b | a b c | the name c is not in it
        a     | a sin | "sin" cannot be a name
        a     | a 2b  | "2b" cannot be a name
        a     | a pi  | "pi" cannot be a name
        a     | a b-c | "b-c" cannot be a name
        """)
    void itsNamesAreThoseGivenAllOfThem(String text, String given, String words) {
        Expression expression = Expression.of(text);
        Refused refused = assertThrows(Refused.class, () -> expression.expect(Set.of(given.split(" "))));
        assertTrue(refused.getMessage().contains(words), refused.getMessage());
        expression.expect(expression.names());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        # by hand: √(0.5² 0.004² + 0.5² 0.006² + 0.003²)
        (a − b) / 2 − c | a = 50; b = 40; c = 0.03 | a = 0.004; b = 0.006; c = 0.003 | 0.004690416
        # a length alone; a name without one adds nothing
        a + b           | a = 1; b = 2             | a = 0.01                        | 0.01
        # one name twice goes with itself: 2 × 0.01
        a + a           | a = 1                    | a = 0.01                        | 0.02
        # √(x² + y²) at 3, 4: 0.6 and 0.8 of them
        sqrt(a^2 + b^2) | a = 3; b = 4             | a = 0.01; b = 0.01              | 0.01
        # 100 sin 60°: 100 cos 60° π / 180 for a degree
        100 * sin(a)    | a = 60                   | a = 0.1                         | 0.087266463
        # the greatest and the least of one name are two sizes
        max(a) − min(a) | a = 1 2                  | a = 0.01                        | 0.014142136
        """)
    void theUncertaintyGoesThroughByTheSlopes(String text, String sizes, String uncertainties, BigDecimal expanded) {
        BigDecimal found = Expression.of(text)
                .expanded(Sized.of(sizes), Sized.one(uncertainties))
                .orElseThrow();
        assertTrue(found.subtract(expanded).abs().doubleValue() < 1e-9, found::toString);
    }

    @Test
    void whereThereIsNoSlopeThereIsNoUncertainty() {
        assertTrue(Expression.of("2*sqrt(x*x + y*y)")
                .expanded(Sized.of("x = 0; y = 0"), Sized.one("x = 0.01; y = 0.01"))
                .isEmpty());
    }

    @Test
    void itIsPrintedWithTheFiguresInItsNamesPlaces() {
        Map<String, String> figures = Map.of("od", "50.00", "id", "40.02", "e", "0.03");
        assertEquals("(50.00 − 40.02) ÷ 2 − 0.03", Expression.of("(od-id)/2-e").with(figures::get));
        assertEquals(
                "a − (b − c) × −(d ÷ (e × f))",
                Expression.of("a-(b-c)*-(d/(e*f))").with(name -> name));
        assertEquals("sqrt(a^2 + (−b)^3)", Expression.of("sqrt(a^2+(-b)^3)").with(name -> name));
        assertEquals(
                "max(a) − π × mean(a, 2)", Expression.of("max(a)-pi*mean(a,2)").with(name -> name));
    }

    @Test
    void aNameIsAWordOfItsOwn() {
        assertTrue(Expression.isName("od_2"));
        assertFalse(Expression.isName("_od"));
        assertFalse(Expression.isName(""));
        assertFalse(Expression.isName("mean"));
    }
}
