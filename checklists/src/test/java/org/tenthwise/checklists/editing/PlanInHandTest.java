package org.tenthwise.checklists.editing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.model.plan.Plan;

class PlanInHandTest {

    private static PlanInHand carrier() {
        return new PlanInHand(PlanText.of(DemoPart.SCREW_CARRIER.planText()).orElseThrow());
    }

    private static List<String> names(PlanInHand plan) {
        return plan.steps().stream()
                .map(step -> step.says("name").orElseThrow())
                .toList();
    }

    @Test
    void whatIsOpenIsKnownByItsStep() {
        PlanInHand plan = carrier();
        assertTrue(plan.plan().isPresent());
        plan.changeStep(3, step -> step.without("name"));
        assertEquals(Optional.empty(), plan.plan());
        assertEquals(List.of(3), plan.openSteps());
        assertEquals(OptionalInt.of(3), plan.open().get(0).step());
        plan.change(text -> text.withHead(head -> head.with("unit", TomlValue.text("ells"))));
        assertTrue(plan.open().stream().anyMatch(point -> point.step().isEmpty()));
    }

    @Test
    void undoLeadsBackStepByStep() {
        PlanInHand plan = carrier();
        assertFalse(plan.canUndo());
        plan.remove(plan.steps().size() - 1);
        plan.copy(0);
        plan.undo();
        plan.undo();
        assertFalse(plan.canUndo());
        assertEquals(DemoPart.SCREW_CARRIER.planText(), plan.text().text());
    }

    @Test
    void whatChangesNothingNeedsNoWayBack() {
        PlanInHand plan = carrier();
        plan.changeStep(0, step -> step.with("name", step.value("name").orElseThrow()));
        assertFalse(plan.canUndo());
    }

    @Test
    void aCopyAnswersNoBalloonTwiceAndHoldsNothing() {
        PlanInHand plan = carrier();
        int held = firstWith(plan, "hold");
        plan.changeStep(held, step -> step.with("balloon", TomlValue.text("12A")));
        plan.copy(held);
        TableText copy = plan.steps().get(held + 1);
        assertEquals(Optional.empty(), copy.value("balloon"));
        assertEquals(Optional.empty(), copy.value("hold"));
        assertEquals(plan.steps().get(held).says("name"), copy.says("name"));
        assertEquals(Optional.of(String.valueOf(held + 2)), copy.value("number"));
    }

    private static int firstWith(PlanInHand plan, String key) {
        for (int place = 0; place < plan.steps().size(); place++) {
            if (plan.steps().get(place).value(key).isPresent()) {
                return place;
            }
        }
        throw new IllegalStateException(key);
    }

    @Test
    void severalAlikeBecomeOneForEachUnderTheSameBalloon() {
        PlanInHand plan = carrier();
        int depth = firstWith(plan, "places");
        plan.changeStep(depth, step -> step.with("balloon", TomlValue.text("7")).with("count", "3"));
        plan.split(depth, 3);
        assertEquals(
                List.of("1", "2", "3"),
                plan.steps().subList(depth, depth + 3).stream()
                        .map(step -> step.value("instance").orElseThrow())
                        .toList());
        assertTrue(plan.steps().subList(depth, depth + 3).stream()
                .allMatch(step -> step.says("balloon").equals(Optional.of("7"))));
    }

    /** So home and the list of plans say the same of one plan. */
    @ParameterizedTest
    @EnumSource(ExamplePart.class)
    void itsChecksAreThoseOfThePlanAlsoWhatIsProvenElsewhere(ExamplePart part) {
        PlanInHand plan = new PlanInHand(PlanText.of(part.planText()).orElseThrow());
        assertEquals(part.plan().steps().size(), plan.checks());
        assertTrue(plan.checks() > plan.steps().size());
    }

    /** Steps moved about at random are the same steps in another order, each with what it names. */
    @Property(tries = 30)
    void stepsMovedAboutStayWhole(@ForAll long seed) {
        Random random = new Random(seed);
        PlanInHand plan = carrier();
        List<String> names = new ArrayList<>(names(plan));
        for (int move = 0; move < 8; move++) {
            int from = random.nextInt(names.size());
            int to = random.nextInt(names.size());
            plan.move(from, to);
            names.add(to, names.remove(from));
        }
        assertEquals(names, names(plan));
        while (plan.canUndo()) {
            plan.undo();
        }
        Plan before = plan.plan().orElseThrow();
        assertEquals(DemoPart.SCREW_CARRIER.plan().steps(), before.steps());
    }
}
