package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.compare.CharacteristicChange;
import org.tenthwise.model.compare.PlanComparison;
import org.tenthwise.model.compare.PlanDifference;
import org.tenthwise.model.plan.Plan;

/** A bore, the plug that must fit it, a thread and a look, and what can change about them. */
class PlansComparedTest {

    static final String PLAN =
            """
            format = 1
            part = "T-1"
            revision = "A"
            issue = "1"
            name = "Test piece, invented"
            material = "nickel alloy 718, aged"
            drawing = "T-1"
            drawing_revision = "C"
            route = "R-1 issue 2"
            unit = "mm"

            [[operation]]
            number = 10
            name = "Turn"

            [[operation]]
            number = 20
            name = "Bore"

            [[step]]
            number = 1
            operation = 10
            kind = "confirm"
            name = "Jaws"
            what = "Jaws wiped."

            [[step]]
            number = 2
            operation = 20
            kind = "bore"
            name = "Bore"
            balloon = 12
            sheet = 1
            drawing_zone = "C4"
            requirement = "Ø20.000/20.020"
            designator = "key"
            method = "Two ways."
            lower = 20.000
            upper = 20.020
            places = ["front", "back"]
            cut_again = "too small"
            gauge_kind = "bore-gauge"
            gauge = "BG-1"
            master = 20.000

            [[step]]
            number = 3
            operation = 20
            kind = "plug-fit"
            name = "Plug in the bore"
            balloon = 3
            method = "By hand."
            bore_step = 2
            clearance_least = 0.005
            clearance_greatest = 0.040
            places = ["end"]
            feel = "freely"
            gauge_kind = "micrometer"

            [[step]]
            number = 4
            operation = 20
            kind = "thread-over-wires"
            name = "Thread"
            balloon = "12A"
            method = "Three wires."
            designation = "M20x2.5-6g"
            wire = 1.443
            places = ["middle"]
            gauge = "MW-1"

            [[step]]
            number = 5
            operation = 20
            kind = "look"
            name = "Edges"
            balloon = 40
            requirement = "BREAK SHARP EDGES 0.2 MAX"
            what = "Edges broken."

            [[step]]
            number = 6
            operation = 20
            kind = "bore"
            name = "Holes"
            balloon = 41
            count = 4
            report = "each"
            method = "Across."
            lower = 8.00
            upper = 8.02
            gauge_kind = "inside-micrometer"
            """;

    static Plan plan(String text) {
        return assertInstanceOf(PlanReading.Good.class, new PlanReader().read(text), () -> new PlanReader()
                        .read(text)
                        .toString())
                .plan();
    }

    private static String changed(String from, String to) {
        assertTrue(PLAN.contains(from), from);
        return PLAN.replaceFirst(Pattern.quote(from), Matcher.quoteReplacement(to));
    }

    private static PlanComparison compared(String after) {
        return PlanComparison.of(plan(PLAN), plan(after));
    }

    private static String told(PlanDifference one) {
        return "%s %s %s>%s".formatted(one.kind(), one.aspect(), one.before(), one.after());
    }

    static Stream<String> told(CharacteristicChange change) {
        String name =
                change.balloon().map(Object::toString).orElse(change.step().name());
        if (change.isNew() || change.isGone()) {
            return Stream.of(name + (change.isNew() ? " NEW" : " GONE"));
        }
        return Stream.concat(
                change.differences().stream().map(one -> name + " " + told(one)),
                change.restsOn().stream().map(on -> name + " rests on " + on));
    }

    static List<String> told(PlanComparison comparison) {
        return Stream.concat(
                        comparison.head().stream().map(PlansComparedTest::told),
                        comparison.changes().stream().flatMap(PlansComparedTest::told))
                .toList();
    }

    private static String proposed(PlanComparison comparison) {
        return comparison.proposed().stream()
                .map(comparison.after()::balloon)
                .map(balloon -> balloon.orElseThrow().text())
                .collect(Collectors.joining(" "));
    }

    /** What changed, what is told of it, and what is to be checked again. */
    @ParameterizedTest
    @CsvFileSource(resources = "/compared/changes.txt", delimiter = '|', quoteCharacter = '`')
    void everyChangeIsToldForWhatItIs(String from, String to, String told, String again) {
        String after = changed(from.replace("\\n", "\n"), to.replace("\\n", "\n"));
        if (to.contains("zone = 'H7'")) {
            after = after.replace("upper = 20.020\n", "");
        }
        PlanComparison comparison = compared(after);
        assertEquals(told.replace("''", ""), String.join("; ", told(comparison)));
        assertEquals(again.replace("''", ""), proposed(comparison));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "lower = 20.000 | lower = 20.00 | true",
                "name = \"Edges\" | name = 'Edges all round' | true",
                "upper = 20.020 | upper = 20.021 | false",
                "designator = \"key\" | designator = 'critical' | false",
                "sheet = 1 | sheet = 2 | false"
            })
    void wordsAndNoughtsLeaveTheMeaning(String from, String to, boolean alike) {
        assertEquals(alike, compared(changed(from, to)).isAlikeInMeaning());
    }

    /** A step put before all others moves every number, and nothing else. */
    @Test
    void anotherOrderNumberIsNoChange() {
        String renumbered = PLAN;
        for (int number = 6; number >= 1; number--) {
            renumbered = renumbered.replace(
                    "[[step]]\nnumber = " + number + "\n", "[[step]]\nnumber = " + (number + 3) + "\n");
        }
        renumbered = renumbered.replace("bore_step = 2", "bore_step = 5");
        assertEquals(List.of(), told(compared(renumbered)));
    }

    private static final String WORKED_OUT = PlanText.HEAD
            + PlanText.DEPTH
            + """

            [[step]]
            number = 6
            operation = 10
            name = "Twice"
            kind = "calculated"
            of = "2 * a"
            names = { a = 5 }
            upper = 0.2500

            [[step]]
            number = 7
            operation = 10
            name = "Hole"
            method = "So."
            kind = "position"
            zone = 0.0100
            x = 1.0
            y = 0.5
            gauge_kind = "caliper"
            """;

    @Test
    void whatIsWorkedOutIsComparedAndRestsOnWhatItIsWorkedOutOf() {
        Plan before = plan(WORKED_OUT);
        assertEquals(List.of(), told(PlanComparison.of(before, plan(WORKED_OUT))));
        Plan renumbered = plan(WORKED_OUT
                .replace("number = 7", "number = 9")
                .replace("number = 6", "number = 8")
                .replace("number = 5", "number = 7")
                .replace("{ a = 5 }", "{ a = 7 }"));
        assertEquals(List.of(), told(PlanComparison.of(before, renumbered)));
        assertEquals(
                List.of("5 REQUIREMENT UPPER_LIMIT 0.1250 in>0.1260 in", "6 rests on 5"),
                told(PlanComparison.of(before, plan(WORKED_OUT.replace("0.1250", "0.1260")))));
        assertEquals(
                List.of("7 AS_WRITTEN UPPER_LIMIT 0.0100 in>0.010 in"),
                told(PlanComparison.of(before, plan(WORKED_OUT.replace("0.0100", "0.010")))));
        assertEquals(
                1,
                told(PlanComparison.of(before, plan(WORKED_OUT.replace("2 * a", "3 * a"))))
                        .size());
    }

    private static final String BY_A_PIN = PlanText.HEAD
            + """
            kind = "worked"
            by = "vee"
            angle = 60
            pin = 0.2500
            lower = 0.250
            upper = 0.270
            places = ["A"]
            gauge_kind = "caliper"
            """;

    @Test
    void anotherPinMakesAnotherSizeOfTheSameReading() {
        Plan before = plan(BY_A_PIN);
        assertEquals(List.of(), told(PlanComparison.of(before, plan(BY_A_PIN))));
        assertEquals(
                List.of("5 REQUIREMENT QUESTION 60°, 0.2500 in>60°, 0.2400 in"),
                told(PlanComparison.of(before, plan(BY_A_PIN.replace("0.2500", "0.2400")))));
    }

    @Test
    void theSameLimitInAnotherUnitIsAnotherRequirement() {
        Plan inches = plan(PlanText.HEAD + PlanText.DEPTH);
        Plan millimetres = plan((PlanText.HEAD + PlanText.DEPTH)
                .replace("unit = \"in\"", "unit = \"mm\"")
                .replace("0.1240", "3.1496")
                .replace("0.1250", "3.175"));
        PlanComparison comparison = PlanComparison.of(inches, millimetres);
        assertTrue(told(comparison).contains("5 REQUIREMENT UPPER_LIMIT 0.1250 in>3.175 mm"), () -> told(comparison)
                .toString());
        assertTrue(comparison.proposesAll());
    }

    @Test
    void plansWithoutBalloonsAreComparedByNumberAndName() {
        Plan before = DemoPart.SCREW_CARRIER.plan();
        String text = DemoPart.SCREW_CARRIER.planText();
        assertEquals(List.of(), told(PlanComparison.of(before, plan(text))));
        Plan after = plan(text.replaceFirst("limit = 0.020\n", "limit = 0.025\n"));
        PlanComparison comparison = PlanComparison.of(before, after);
        assertEquals(
                1,
                comparison.changes().stream()
                        .filter(change -> !change.differences().isEmpty())
                        .count());
        assertEquals(
                "REQUIREMENT UPPER_LIMIT 0.020 mm>0.025 mm",
                told(comparison.changes().get(0).differences().get(0)));
    }

    @Test
    void aPlanThatGetsBalloonsIsComparedByItsWork() {
        String plain = PLAN.replaceAll("balloon = .*\n", "");
        List<String> told = told(PlanComparison.of(plan(plain), plan(PLAN)));
        assertEquals(5, told.size(), told::toString);
        assertTrue(told.stream().allMatch(one -> one.contains("PLACE BALLOON >")), told::toString);
    }

    /** Every component a check or a plan has is compared: one that nobody sorted counts as a requirement. */
    @Test
    void nothingOfADemoPlanGoesByUnsorted() {
        for (DemoPart part : DemoPart.values()) {
            for (DemoPart other : DemoPart.values()) {
                assertFalse(
                        told(PlanComparison.of(part.plan(), other.plan())).stream()
                                .anyMatch(one -> one.contains("REQUIREMENT OTHER")),
                        () -> told(PlanComparison.of(part.plan(), other.plan())).toString());
            }
        }
    }
}
