package org.tenthwise.checklists.editing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.checklists.format.TomlReading;
import org.tenthwise.checklists.format.TomlText;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.checklists.rules.PlanReading;

class PlanTextTest {

    private static final String WRITTEN =
            """
            format = 1

            # A word about the part.
            name = "Bush" # as the shop calls it

            [[operation]]
            number = 10

            # The bore first:
            # it carries the plug.
            [[step]]
            number = 1
            places = [
              "front", # near the face
              "back",
            ]
            lower = 20.000 # H7
            # nothing else

            [[step]]
            number = 2
            method = \"""
            [[step]] is no header here,
            # and this no comment.\"""

            [[step]]
            number = 3
            name = 'no "end]'

            [step.more]
            deep = { a = [1, 2], b = "}" }

            [outline]
            outside = [[0, 40], [30, 40]]""";

    private static PlanText of(String text) {
        return PlanText.of(text).orElseThrow();
    }

    private static RawTable read(String text) {
        return ((TomlReading.Readable) new TomlText().read(text)).top();
    }

    @ParameterizedTest
    @EnumSource(DemoPart.class)
    void whatIsNotChangedStaysByteForByte(DemoPart part) {
        String text = part.plan().source().text();
        assertEquals(text, of(text).text());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "\n",
                "# alone",
                "a=1",
                "a = 1\r\nb = \"x\"\r\n[c]\r\nd=2",
                "\"a = b\" = 'c'\n",
                "a = \"\"\"x\"\"\"\"\"\nb = 1",
                "a = '''it's''' # ' \nb = [ # ]\n 1 ]\n",
                "a.b = 1979-05-27 07:32:00 # day\n[ x . y ]\n",
                "a = \"q\\\"]\" \n  [[ step ]] # one\n n = 1\n"
            })
    void everyWayOfWritingIsKept(String text) {
        assertEquals(text, of(text).text());
    }

    @Test
    void whatIsNoTomlIsNotTouched() {
        assertTrue(PlanText.of("a = ").isEmpty());
        assertTrue(PlanText.of("a = [1, ").isEmpty());
    }

    @Test
    void tablesAndKeysAreThoseOfTheText() {
        PlanText plan = of(WRITTEN);
        assertEquals(List.of("format", "name"), plan.head().keys());
        assertEquals(3, plan.list("step").size());
        assertEquals(
                List.of("number", "places", "lower"), plan.list("step").get(0).keys());
        assertEquals("20.000", plan.list("step").get(0).value("lower").orElseThrow());
        assertEquals("'no \"end]'", plan.list("step").get(2).value("name").orElseThrow());
        assertTrue(plan.table("outline").isPresent());
    }

    @Test
    void aFigureChangesInItsPlaceAndTheCommentBehindItStays() {
        String changed = of(WRITTEN)
                .with("step", 0, step -> step.with("lower", TomlValue.number(new BigDecimal("20.0070"))))
                .text();
        assertEquals(WRITTEN.replace("lower = 20.000 # H7", "lower = 20.0070 # H7"), changed);
    }

    @Test
    void aNewKeyStandsWhereItBelongs() {
        PlanText plan = of(WRITTEN);
        assertEquals(
                WRITTEN.replace("lower = 20.000 # H7\n", "lower = 20.000 # H7\nupper = 20.021\n"),
                plan.with("step", 0, step -> step.with("upper", "20.021")).text());
        assertEquals(
                WRITTEN.replace("number = 1\n", "number = 1\nkind = \"bore\"\n"),
                plan.with("step", 0, step -> step.withAfter(List.of("number"), "kind", TomlValue.text("bore")))
                        .text());
    }

    @Test
    void aKeyAddedToTheLastTableBeginsALineOfItsOwn() {
        assertEquals(
                "a = 1\nb = 2\n",
                of("a = 1").withHead(head -> head.with("b", "2")).text());
        assertEquals(
                "[[step]]\nb = 2\n",
                of("[[step]]").with("step", 0, step -> step.with("b", "2")).text());
    }

    @Test
    void aStepTakenOutTakesItsCommentAndItsInnerTablesAlong() {
        String without = of(WRITTEN).without("step", 2).without("step", 0).text();
        assertEquals(1, of(without).list("step").size());
        assertTrue(without.contains("# A word about the part."), without);
        assertTrue(!without.contains("it carries the plug") && !without.contains("step.more"), without);
        assertTrue(without.contains("[outline]"), without);
    }

    @Test
    void aStepMovedTakesItsCommentAndItsInnerTablesAlong() {
        PlanText moved = of(WRITTEN).moved("step", 2, 0);
        assertEquals("3", moved.list("step").get(0).value("number").orElseThrow());
        assertTrue(moved.list("step").get(0).text().contains("[step.more]"));
        assertTrue(moved.list("step").get(1).text().startsWith("\n# The bore first:"));
        assertEquals(of(WRITTEN).text(), moved.moved("step", 0, 2).text());
    }

    @Test
    void aKeyTakenOutLeavesWhatWasWrittenAboveIt() {
        String without = of(WRITTEN).withHead(head -> head.without("name")).text();
        assertEquals(WRITTEN.replace("name = \"Bush\" # as the shop calls it\n", ""), without);
    }

    @Test
    void aFirstStepGoesToTheEndOfTheFile() {
        String text = of("format = 1")
                .inserted("step", 0, TableText.ofList("step").with("number", "1"))
                .text();
        assertEquals("format = 1\n\n[[step]]\nnumber = 1\n", text);
    }

    /** A seed a text: what random changes leave is still TOML with the steps it should have. */
    @Property(tries = 200)
    void randomChangesLeaveTheStepsThatWereMeant(@ForAll long seed) {
        Random random = new Random(seed);
        PlanText plan = of(WRITTEN);
        List<String> numbers = new ArrayList<>(List.of("1", "2", "3"));
        for (int change = 0; change < 20; change++) {
            int at = numbers.isEmpty() ? 0 : random.nextInt(numbers.size());
            switch (numbers.size() < 2 ? 0 : random.nextInt(3)) {
                case 0 -> {
                    String number = Integer.toString(100 + change);
                    plan = plan.inserted("step", at, TableText.ofList("step").with("number", number));
                    numbers.add(at, number);
                }
                case 1 -> {
                    plan = plan.without("step", at);
                    numbers.remove(at);
                }
                default -> {
                    int to = random.nextInt(numbers.size());
                    plan = plan.moved("step", at, to);
                    numbers.add(to, numbers.remove(at));
                }
            }
            plan = of(plan.text());
        }
        assertEquals(
                numbers,
                plan.list("step").stream()
                        .map(step -> step.value("number").orElseThrow())
                        .toList());
    }

    @Property(tries = 500)
    void textIsReadAsItWasWritten(@ForAll @StringLength(max = 40) String text) {
        if (text.codePoints().noneMatch(sign -> Character.getType(sign) == Character.SURROGATE)) {
            RawTable table = read("a = " + TomlValue.text(text) + "\nb = 1\n");
            assertEquals(text, ((RawValue.Text) table.values().get("a")).text());
        }
    }

    @ParameterizedTest
    @EnumSource(DemoPart.class)
    void aPlanWithAStepReadAndWrittenAgainIsTheSamePlan(DemoPart part) {
        PlanText plan = of(part.plan().source().text());
        for (int step = 0; step < plan.list("step").size(); step++) {
            TableText before = plan.list("step").get(step);
            for (String key : before.keys()) {
                plan = plan.with(
                        "step", step, table -> table.with(key, before.value(key).orElseThrow()));
            }
        }
        PlanReading again = new PlanReader().read(plan.text());
        assertEquals(part.plan().steps(), ((PlanReading.Good) again).plan().steps());
        assertEquals(part.plan().source().text(), plan.text());
    }
}
