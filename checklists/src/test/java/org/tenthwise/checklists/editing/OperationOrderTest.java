package org.tenthwise.checklists.editing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A list comes in the order of the drawing; its checks go into the order of work as their operations are told. */
class OperationOrderTest {

    private static PlanInHand plan(int steps) {
        StringBuilder plan = new StringBuilder("format = 1\n\n[[operation]]\nnumber = 10\nname = \"Turn\"\n");
        for (int number = 1; number <= steps; number++) {
            plan.append("\n[[step]]\nnumber = %d\nballoon = \"%d\"\n".formatted(number, number));
        }
        return new PlanInHand(PlanText.of(plan.toString()).orElseThrow());
    }

    private static int answer(PlanInHand plan, int place, int operation) {
        return plan.answer(
                place, step -> step.with("operation", String.valueOf(operation)), number -> "Operation " + number);
    }

    private static List<String> of(List<TableText> tables, String key) {
        return tables.stream().map(table -> table.value(key).orElse("-")).toList();
    }

    @Test
    void aCheckGoesToItsOperationAndANewOperationIsOneOfThePlan() {
        PlanInHand plan = plan(4);
        assertEquals(0, answer(plan, 0, 30));
        assertEquals(0, answer(plan, 1, 20));
        assertEquals(2, answer(plan, 2, 30));
        assertEquals(1, answer(plan, 3, 20));
        assertEquals(List.of("\"2\"", "\"4\"", "\"1\"", "\"3\""), of(plan.steps(), "balloon"));
        assertEquals(List.of("1", "2", "3", "4"), of(plan.steps(), "number"));
        assertEquals(List.of("10", "20", "30"), of(plan.text().list("operation"), "number"));
        assertEquals(
                List.of("\"Turn\"", "\"Operation 20\"", "\"Operation 30\""),
                of(plan.text().list("operation"), "name"));
    }

    /** The change, the new operation and the move are one change. */
    @Test
    void oneUndoTakesItAllBack() {
        PlanInHand plan = plan(3);
        answer(plan, 0, 30);
        String before = plan.text().text();
        answer(plan, 2, 20);
        plan.undo();
        assertEquals(before, plan.text().text());
    }

    @Test
    void aCheckWhoseOperationStaysStaysWhereItIs() {
        PlanInHand plan = plan(2);
        answer(plan, 0, 10);
        assertEquals(1, plan.answer(1, step -> step.with("caution", "\"Hot\""), number -> number));
        assertEquals(0, answer(plan, 0, 10));
        assertEquals(List.of("\"1\"", "\"2\""), of(plan.steps(), "balloon"));
    }

    /** Whatever is told in whatever order, operations rise, and within one the order of the list stays. */
    @Test
    void operationsRiseInTheEnd() {
        Random random = new Random(11);
        for (int round = 0; round < 40; round++) {
            PlanInHand plan = plan(8);
            for (int place = 0; place < 8; place++) {
                answer(plan, place, 10 * (1 + random.nextInt(4)));
            }
            List<Integer> operations =
                    of(plan.steps(), "operation").stream().map(Integer::valueOf).toList();
            assertEquals(operations.stream().sorted().toList(), operations);
            List<String> balloons = of(plan.steps(), "balloon");
            IntStream.range(1, 8)
                    .filter(at -> operations.get(at).equals(operations.get(at - 1)))
                    .forEach(at -> assertEquals(
                            true, balloons.get(at - 1).compareTo(balloons.get(at)) < 0, balloons::toString));
        }
    }
}
