package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.WorkedCheck;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.worked.Given;
import org.tenthwise.model.worked.WorkedWay;

/** In inches, as the head of these plans is. */
class WorkedKindTest {

    private static final List<String> WAYS = List.of(
            "by = \"two-diameters\"; apart = 2; nominal = 6; plus_minus = 0.1",
            "by = \"sine-bar\"; bar = 5.0000; nominal = 30; plus_minus = 0.1",
            "by = \"rollers\"; height = 1.5; end = \"small-down\"; nominal = 6; plus_minus = 0.1",
            "by = \"balls\"; small_ball = 0.5; large_ball = 0.75; nominal = 6; plus_minus = 0.1",
            "by = \"chord\"; chord = 1; lower = 1.9; upper = 2.1",
            "by = \"rolls\"; roll = 0.25; arc = \"concave\"; lower = 1.9; upper = 2.1",
            "by = \"dovetail\"; angle = 60; pin = 0.25; height = 0.4; side = \"male\"; lower = 1.9; upper = 2.1",
            "by = \"keyway\"; depth_from = \"crest\"; width = 0.25; block = 0.1; lower = 0.1; upper = 0.2",
            "by = \"vee\"; angle = \"60°\"; pin = 0.25; lower = 0.25; upper = 0.27",
            "by = \"over-pins\"; teeth = 32; diametral_pitch = 16; pressure_angle = 20; pin = 0.108; "
                    + "side = \"external\"; lower = 2.145; upper = 2.151",
            "by = \"span\"; teeth = 32; module = 0.0625; pressure_angle = 20; over = 4; lower = 0.66; upper = 0.68",
            "by = \"centres\"; read = \"over\"; first = 0.5; second = 0.375; lower = 2.99; upper = 3.01");

    private static WorkedCheck worked(String keys) {
        return assertInstanceOf(
                WorkedCheck.class,
                PlanText.check(
                        """
                        kind = "worked"
                        %s
                        places = ["0°", "90°"]
                        gauge_kind = "caliper"
                        """
                                .formatted(keys.replace("; ", "\n"))));
    }

    @Test
    void aPlanCanAskForEveryWay() {
        Set<WorkedWay> read = WAYS.stream()
                .map(keys -> worked(keys).by().way())
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(WorkedWay.class)));
        assertEquals(EnumSet.allOf(WorkedWay.class), read);
        assertEquals(WAYS.size(), read.size());
    }

    /** What is read at every place, and under what a ledger knows it. */
    @Test
    void everyPlaceHasARoomForEachReading() {
        WorkedCheck check = worked(WAYS.get(2));
        assertEquals(
                List.of("1.1 0°: low", "1.2 0°: high", "2.1 90°: low", "2.2 90°: high"),
                check.slots().stream()
                        .map(slot -> slot.key() + " " + slot.place().name())
                        .toList());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '#',
            textBlock =
                    """
            # of an angle the limits and the guard band, read in lengths of the plan
            nominal = 6; plus_minus = 0.1                         | 5.9     | °
            nominal = "6°"; plus_minus = "0°05'"                  | 5°55′   | ° ′
            lower = "5°55'"; upper = "6°05'"; guard_band = "0°00'30" | 5°55′00″ | ° ′ ″
            """)
    void anAngleHasLimitsOfItsOwn(String keys, String lower, String unit) {
        WorkedCheck check = worked("by = \"sine-bar\"; bar = 5; " + keys);
        assertEquals(
                Optional.of(new Written(lower, Unit.ofSymbol(unit).orElseThrow())),
                check.limits().lower());
        Plan plan = PlanText.plan("kind = \"worked\"\nby = \"sine-bar\"\nbar = 5\n" + keys.replace("; ", "\n")
                + "\nplaces = [\"0°\"]\ngauge_kind = \"gauge-blocks\"\n");
        assertEquals(Unit.INCH, plan.unit(plan.step(5)));
    }

    @Test
    void whatIsGivenIsKeptAsThePlanHasIt() {
        assertEquals(
                List.of("60°", "0.25 in", "0.4 in"),
                worked(WAYS.get(6)).by().given().stream().map(Given::figure).toList());
    }
}
