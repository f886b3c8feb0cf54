package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.plan.CalculatedCheck;
import org.tenthwise.model.plan.CalculatedCheck.By;
import org.tenthwise.model.plan.CalculatedCheck.Use;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

class CalculatedKindTest {

    /**
     * Check 5 is a depth, 6 an angle, 7 a run-out, 8 only asks, 9 is worked out itself, 10 is what an indicator shows.
     */
    private static final String BEFORE = PlanText.HEAD
            + PlanText.DEPTH
            + """

            [[step]]
            number = 6
            operation = 10
            name = "Angle"
            method = "So."
            kind = "angle"
            lower = 29.5
            upper = 30.5
            places = ["one"]
            gauge_kind = "bevel-protractor"

            [[step]]
            number = 7
            operation = 10
            name = "Run-out"
            method = "So."
            kind = "run-out"
            limit = 0.002
            gauge_kind = "dial-indicator"

            [[step]]
            number = 8
            operation = 10
            name = "Look"
            kind = "look"
            what = "It is so."

            [[step]]
            number = 9
            operation = 10
            name = "Twice"
            kind = "calculated"
            of = "2 * a"
            names = { a = 5 }
            upper = 0.2500

            [[step]]
            number = 10
            operation = 10
            name = "Flat"
            method = "So."
            kind = "indicated"
            movement_of = "flatness"
            limit = 0.0010
            places = ["face"]
            gauge_kind = "lever-indicator"

            [[step]]
            number = 11
            operation = 10
            name = "It"
            """;

    private static PlanReading read(String keys) {
        return new PlanReader().read(BEFORE + "kind = \"calculated\"\n" + keys.replace("; ", "\n"));
    }

    private static CalculatedCheck check(String keys) {
        PlanReading reading = read(keys);
        return assertInstanceOf(
                CalculatedCheck.class,
                assertInstanceOf(PlanReading.Good.class, reading, reading::toString)
                        .plan()
                        .step(11)
                        .check());
    }

    @Test
    void aNameIsACheckOrACheckByOneOfItsPlaces() {
        CalculatedCheck check = check("of = \"b - a + e\"; names = { a = { step = 5, value = \"least\" }, "
                + "b = 9, e = { step = 7, value = \"eccentricity\" } }; lower = -0.0010; upper = 0.1250");
        assertEquals(
                List.of(new Use("b", 9, By.EACH), new Use("a", 5, By.LEAST), new Use("e", 7, By.ECCENTRICITY)),
                check.uses());
        assertEquals(new Written("-0.0010", Unit.INCH), check.limits().lower().orElseThrow());
    }

    @Test
    void whatAnIndicatorShowsCountsOnceItIsSaid() {
        assertEquals(
                List.of(new Use("m", 10, By.MOVEMENT)),
                check("of = \"m / 2\"; names = { m = { step = 10, value = \"movement\" } }; upper = 0.0010")
                        .uses());
    }

    /** Check 9 rests on 5, and so does what is worked out of 9. */
    @Test
    void itRestsOnWhatItsChecksRestOn() {
        assertEquals(
                List.of(9, 5), check("of = \"a\"; names = { a = 9 }; upper = 1").restsOn());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '#',
            textBlock =
                    """
            of = "90 - a"; names = { a = 6 }; lower = 59.5; upper = 60.5                     | 59.5   | °
            of = "90 - a"; names = { a = 6 }; lower = "59°30'"; upper = 60.5                 | 59°30′ | ° ′
            of = "atan(d / 2)"; names = { d = 5 }; lower = 3                                 | 3      | °
            """)
    void anAngleHasLimitsOfAnAngle(String keys, String lower, Unit unit) {
        assertEquals(new Written(lower, unit), check(keys).limits().lower().orElseThrow());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '#',
            textBlock =
                    """
            names = { a = 5 }; upper = 1                                                     | "of" is missing
            of = "a"; upper = 1                                                              | "names" is missing
            of = "a"; names = { a = 5 }                                                      | are missing
            of = "a"; names = 5; upper = 1                                                   | "names"
            of = "a +"; names = { a = 5 }; upper = 1                                         | ends where a figure
            of = "a + b"; names = { a = 5 }; upper = 1                                       | name b in it stands for nothing
            of = "a"; names = { a = 5, b = 9 }; upper = 1                                    | name b is not in it
            of = "a * a"; names = { a = 5 }; upper = 1                                       | a length times a length
            of = "a + w"; names = { a = 5, w = 6 }; upper = 1                                | do not go together
            of = "a / b"; names = { a = 5, b = 9 }; upper = 1                                | a number without unit
            of = "a"; names = { a = 4 }; upper = 1                                           | names check 4, which does not come before
            of = "a"; names = { a = 11 }; upper = 1                                          | names check 11, which does not come before
            of = "a"; names = { a = 8 }; upper = 1                                           | comes to no length and no angle
            of = "a"; names = { a = 7 }; upper = 1                                           | say with "value"
            of = "a"; names = { a = { step = 7 } }; upper = 1                                | say with "value"
            of = "a"; names = { a = { step = 7, value = "mean" } }; upper = 1                | say with "value"
            of = "a"; names = { a = { step = 5, value = "run-out" } }; upper = 1            | this check comes to a size
            of = "a"; names = { a = { step = 5, value = "movement" } }; upper = 1           | this check comes to a size
            of = "a"; names = { a = 10 }; upper = 1                                           | that the name is its movement
            of = "a"; names = { a = { step = 10, value = "mean" } }; upper = 1                | that the name is its movement
            of = "a"; names = { a = { step = 10, value = "run-out" } }; upper = 1             | that the name is its movement
            of = "a"; names = { a = { step = 5, value = "most" } }; upper = 1                | most
            of = "a"; names = { a = { value = "least" } }; upper = 1                         | "step" is missing
            of = "a"; names = { a = "5" }; upper = 1                                         | whole number
            of = "a"; names = { a = 5 }; lower = 2; upper = 1                                | below
            of = "a"; names = { a = 5 }; upper = 1; places = ["one"]                         | places
            of = "a"; names = { a = 5 }; upper = 1; gauge_kind = "micrometer"                | gauge_kind
            """)
    void whatMakesNoSenseIsNamed(String keys, String words) {
        PlanReading.Bad bad = assertInstanceOf(PlanReading.Bad.class, read(keys));
        String all = bad.problems().stream().map(Object::toString).collect(Collectors.joining("\n"));
        assertTrue(all.contains(words), all);
        assertEquals(1, bad.problems().size(), all);
    }
}
