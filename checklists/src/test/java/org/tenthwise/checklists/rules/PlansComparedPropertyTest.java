package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.tenthwise.model.compare.CharacteristicChange;
import org.tenthwise.model.compare.PlanComparison;
import org.tenthwise.model.compare.PlanDifference;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;

/** What holds of any two plans that differ by some changes. */
class PlansComparedPropertyTest {

    /** The plan with some of the changes there can be. */
    private static Plan some(long seed) {
        Random random = new Random(seed);
        String text = PlansComparedTest.PLAN;
        for (Map.Entry<String, String> change : Map.of(
                        "upper = 20.020", "upper = 20.025",
                        "lower = 8.00\n", "lower = 8.000\n",
                        "balloon = 40", "balloon = 44",
                        "balloon = \"12A\"", "balloon = 13",
                        "gauge = \"MW-1\"", "gauge = \"MW-2\"",
                        "name = \"Edges\"", "name = \"Edges all round\"",
                        "designator = \"key\"\n", "",
                        "sheet = 1", "sheet = 2")
                .entrySet()) {
            text = random.nextBoolean() ? text.replace(change.getKey(), change.getValue()) : text;
        }
        return PlansComparedTest.plan(text);
    }

    @Property(tries = 100)
    void aPlanIsAlikeToItself(@ForAll long seed) {
        PlanComparison comparison = PlanComparison.of(some(seed), some(seed));
        assertEquals(List.of(), PlansComparedTest.told(comparison));
        assertTrue(comparison.isAlikeInMeaning());
        assertEquals(List.of(), comparison.proposed());
    }

    @Property(tries = 200)
    void theOtherWayRoundIsTheMirror(@ForAll long one, @ForAll long other) {
        PlanComparison there = PlanComparison.of(some(one), some(other));
        PlanComparison back = PlanComparison.of(some(other), some(one));
        assertEquals(there.isAlikeInMeaning(), back.isAlikeInMeaning());
        assertEquals(
                there.changes().stream()
                        .flatMap(PlansComparedPropertyTest::mirrored)
                        .sorted()
                        .toList(),
                back.changes().stream()
                        .flatMap(change -> PlansComparedTest.told(change).filter(said -> !said.contains(" rests on ")))
                        .sorted()
                        .toList());
    }

    private static Stream<String> mirrored(CharacteristicChange change) {
        return PlansComparedTest.told(new CharacteristicChange(
                change.balloon(),
                change.after(),
                change.before(),
                change.differences().stream()
                        .map(one -> new PlanDifference(one.kind(), one.aspect(), one.after(), one.before()))
                        .toList(),
                List.of()));
    }

    @Property(tries = 100)
    void whatIsProposedIsOfTheDrawingAndInThePlan(@ForAll long one, @ForAll long other) {
        PlanComparison comparison = PlanComparison.of(some(one), some(other));
        assertTrue(comparison.proposed().stream().allMatch(Step::isOfDrawing));
        assertTrue(comparison.after().steps().containsAll(comparison.proposed()));
    }
}
