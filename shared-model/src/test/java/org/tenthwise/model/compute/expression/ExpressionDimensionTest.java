package org.tenthwise.model.compute.expression;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.words.Refused;

/** What an expression comes to: a length, an angle or a number, by what its names stand for. */
class ExpressionDimensionTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        (a − b) / 2 − c        | a length
        a + 0.5                | a length
        2 * a                  | a length
        100 * sin(30)          | a length
        sqrt(a*a + b*b)        | a length
        sqrt(a^2 − 25*25)      | a length
        a * b / c              | a length
        a / 2 / tan(w / 2)     | a length
        a*a / (8 * b)          | a length
        pi * a * w / 180       | a length
        min(a, b, 3)           | a length
        abs(a − b)             | a length
        a * cos(w)             | a length
        a / b                  | a number without unit
        sin(w)                 | a number without unit
        asin(a / b)            | an angle
        asin(a / 100)          | an angle
        atan(12.5 / a)         | an angle
        90 − w / 2             | an angle
        w + v                  | an angle
        w / v * a              | a length
        (a / b) * w            | an angle
        """)
    void whatComesOutIsALengthAnAngleOrANumber(String text, String kind) {
        assertEquals(kind, dimension(text).said().toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        a * b         | it comes to a length times a length
        pi * a^2 / 4  | it comes to a length times a length
        a^3           | it comes to a length to the power 3
        1 / a         | it comes to a length to the power -1
        a + a*b       | in a + a × b, a length and a length times a length
        a + a/b       | a length and a number
        a + w         | a length and an angle
        sin(a)        | a is a length where an angle was expected
        sin(a / b)    | a ÷ b is a number without unit where an angle
        asin(a)       | a is a length where a number without unit
        asin(w)       | w is an angle where
        sqrt(a)       | a is a length, and its root
        sqrt(w)       | w is an angle, and its root
        max(a, a*a)   | a length and a length times a length
        """)
    void whatCannotBeAddedOrIsNoSizeIsRefused(String text, String words) {
        Refused refused = assertThrows(Refused.class, () -> dimension(text));
        assertTrue(refused.getMessage().contains(words), refused.getMessage());
    }

    private static Dimension dimension(String text) {
        return Expression.of(text)
                .dimension(Map.of(
                        "a", Dimension.LENGTH,
                        "b", Dimension.LENGTH,
                        "c", Dimension.LENGTH,
                        "v", Dimension.ANGLE,
                        "w", Dimension.ANGLE));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            textBlock =
                    """
        b / 2 / tan(a / 2)       | a
        b * sin(a) + cos(c − a)  | a c
        tan(atan(b / c) + a)     | a
        sin(mean(a)) * b         | a
        asin(b / c)              | -
        """)
    void whatASineIsOfIsAnAngle(String text, String angles) {
        assertEquals(
                angles == null ? Set.of() : Stream.of(angles.split(" ")).collect(Collectors.toSet()),
                Expression.of(text).angles());
    }
}
