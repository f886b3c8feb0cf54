package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.plan.PositionCheck;
import org.tenthwise.model.plan.TruePlace;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.MaterialModifier;

class PositionKindTest {

    private static PositionCheck position(String keys) {
        return assertInstanceOf(
                PositionCheck.class,
                PlanText.check(
                        """
                        kind = "position"
                        zone = 0.10
                        %s
                        gauge_kind = "caliper"
                        """
                                .formatted(keys)));
    }

    /** By hand: 25 at 36.8699° is 20 and 15. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            x = 20.0; y = -15                | 20.0      | -15
            radius = 25; angle = 36.86989765 | 20.000000  | 15.000000
            radius = 25; angle = 270         | 0.000000   | -25.000000
            """)
    void aTruePlaceIsWrittenByXAndYOrByRadiusAndAngle(String keys, String x, String y) {
        TruePlace place = position(keys.replace("; ", "\n")).holes().get(0);
        assertEquals(List.of(x, y), List.of(place.x().text(), place.y().text()));
        assertEquals(Optional.empty(), place.name());
    }

    /** By hand: four on 40 from 90° on, about X 100. */
    @Test
    void aBoltCircleNumbersItsHoles() {
        PositionCheck check = position("bolt_circle = { diameter = 40, holes = 4, start = 90, x = 100 }");
        assertEquals(
                List.of(
                        "1 100.000000 20.000000",
                        "2 80.000000 0.000000",
                        "3 100.000000 -20.000000",
                        "4 120.000000 0.000000"),
                check.holes().stream()
                        .map(hole -> hole.name().orElseThrow() + " " + hole.x().text() + " "
                                + hole.y().text())
                        .toList());
        assertEquals(8, check.slots().size());
        assertEquals("4, Y", check.slots().get(7).place().name());
    }

    @Test
    void holesOfTheirOwnAreReadAtBothEnds() {
        PositionCheck check = position(
                """
                holes = [{ name = "A", x = 0, y = 12 }, { name = "B", radius = 12, angle = 0 }]
                ends = ["entry", "exit"]
                """);
        assertEquals(MaterialModifier.NONE, check.modifier());
        assertEquals(
                List.of(
                        "A, entry, X",
                        "A, entry, Y",
                        "A, exit, X",
                        "A, exit, Y",
                        "B, entry, X",
                        "B, entry, Y",
                        "B, exit, X",
                        "B, exit, Y"),
                check.slots().stream().map(slot -> slot.place().name()).toList());
        assertEquals("12.000000", check.nominal(check.slots().get(6)).text());
    }

    private static final String BY_ANGLE =
            """
            kind = "position"
            zone = 0.10
            read = "polar"
            %s
            gauge_kind = "%s"
            """;

    @Test
    void readByRadiusAndAngleEachHasItsUnit() {
        PositionCheck check = assertInstanceOf(
                PositionCheck.class,
                PlanText.check(BY_ANGLE.formatted("bolt_circle = { diameter = 40, holes = 2 }", "coordinate-machine")));
        assertEquals(
                List.of("1, R", "1, φ", "2, R", "2, φ"),
                check.slots().stream().map(slot -> slot.place().name()).toList());
        assertEquals(
                List.of(Optional.empty(), Optional.of(Unit.DEGREE)),
                check.slots().subList(2, 4).stream().map(check::unit).toList());
        assertEquals(
                List.of("20", "180"),
                check.slots().subList(2, 4).stream()
                        .map(slot -> check.nominal(slot).text())
                        .toList());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            x = 0; y = 0                                     | coordinate-machine | from there
            x = 20; y = 0                                    | caliper            | cannot read an angle
            x = 20; y = 0; uncertainty_of_angle = "anything" | coordinate-machine | anything
            """)
    void whatCannotBeReadByRadiusAndAngleIsRefused(String keys, String gauge, String why) {
        PlanReading.Bad bad = assertInstanceOf(
                PlanReading.Bad.class,
                new PlanReader().read(PlanText.HEAD + BY_ANGLE.formatted(keys.replace("; ", "\n"), gauge)));
        assertTrue(bad.problems().toString().contains(why), bad.problems()::toString);
    }

    /** Of six alike the check reads all six. */
    @Test
    void aPatternLooksAfterAllOfItsHoles() {
        assertEquals(
                6,
                position("count = 6\nbolt_circle = { diameter = 40, holes = 6 }")
                        .readsAlike());
    }
}
