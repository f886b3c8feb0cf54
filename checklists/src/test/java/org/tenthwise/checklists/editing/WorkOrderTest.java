package org.tenthwise.checklists.editing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepClass;

class WorkOrderTest {

    private static final String WRITTEN =
            """
            [[step]]
            number = 4
            kind = "confirm"
            hold = [ 4, 7 ] # both

            [[step]]
            number = 7
            bore_step = 4
            offset_step = 4

            [[step]]
            number = 9
            names = { d4 = 4, e = 7 }
            """;

    private static PlanText of(String text) {
        return PlanText.of(text).orElseThrow();
    }

    private static List<Optional<String>> values(PlanText plan, String key) {
        return plan.list("step").stream().map(step -> step.value(key)).toList();
    }

    @Test
    void numbersThatRiseStayAsTheyAre() {
        assertEquals(WRITTEN, new WorkOrder(of(WRITTEN)).numbered().text());
    }

    @Test
    void whatNamesAStepNamesItByItsNewNumber() {
        PlanText moved = new WorkOrder(of(WRITTEN).moved("step", 2, 0)).numbered();
        assertEquals(List.of(Optional.of("1"), Optional.of("2"), Optional.of("3")), values(moved, "number"));
        assertEquals("[ 2, 3 ]", values(moved, "hold").get(1).orElseThrow());
        assertEquals("2", values(moved, "bore_step").get(2).orElseThrow());
        assertEquals("4", values(moved, "offset_step").get(2).orElseThrow(), "the step of the register is no check");
        assertEquals("{ d4 = 2, e = 3 }", values(moved, "names").get(0).orElseThrow());
        assertTrue(moved.text().contains("# both"));
    }

    @Test
    void theNumberOnTheDrawingIsWrittenOutBeforeThePlaceChanges() {
        PlanText moved = new WorkOrder(of(WRITTEN).moved("step", 2, 0)).numbered();
        assertEquals(List.of(Optional.of("\"9\""), Optional.empty(), Optional.of("\"7\"")), values(moved, "balloon"));
    }

    @Test
    void balloonsThePlanHasAreLeftAlone() {
        PlanText told = of(WRITTEN).with("step", 0, step -> step.with("balloon", "\"12A\""));
        PlanText moved = new WorkOrder(told.moved("step", 2, 0)).numbered();
        assertEquals(List.of(Optional.empty(), Optional.of("\"12A\""), Optional.empty()), values(moved, "balloon"));
    }

    @Test
    void aCopyWithoutANumberTakesNoReferenceAway() {
        PlanText copied =
                of(WRITTEN).inserted("step", 1, of(WRITTEN).list("step").get(0).without("number"));
        PlanText numbered = new WorkOrder(copied).numbered();
        assertEquals("1", values(numbered, "bore_step").get(2).orElseThrow());
        assertEquals("{ d4 = 1, e = 3 }", values(numbered, "names").get(3).orElseThrow());
    }

    /** What a demo part asks for does not change when its numbers do, but for the numbers. */
    @ParameterizedTest
    @EnumSource(DemoPart.class)
    void aPlanOtherwiseNumberedIsTheSamePlan(DemoPart part) {
        Plan plan = part.plan();
        PlanText text = of(plan.source().text());
        PlanText first = new WorkOrder(text.inserted(
                        "step", 0, text.list("step").get(0).without("number").without("hold")))
                .numbered();
        Plan longer = read(first);
        assertEquals(plan.steps().size() + 1, longer.steps().size());
        for (int at = 0; at < plan.steps().size(); at++) {
            Step before = plan.steps().get(at);
            Step after = longer.steps().get(at + 1);
            assertEquals(before.name(), after.name());
            assertEquals(names(plan, before.hold()), names(longer, after.hold()));
            assertEquals(
                    names(plan, before.check().restsOn()),
                    names(longer, after.check().restsOn()));
            if (before.stepClass() == StepClass.DRAWING) {
                assertEquals(
                        String.valueOf(before.number()),
                        after.drawing().balloon().orElseThrow().text());
            }
        }
    }

    private static Plan read(PlanText text) {
        PlanReading reading = new PlanReader().read(text.text());
        return assertInstanceOf(PlanReading.Good.class, reading, reading::toString)
                .plan();
    }

    private static List<String> names(Plan plan, List<Integer> numbers) {
        return numbers.stream().map(number -> plan.step(number).name()).toList();
    }
}
