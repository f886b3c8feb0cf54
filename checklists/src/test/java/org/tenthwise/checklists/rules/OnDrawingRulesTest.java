package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.DrawingInForce;
import org.tenthwise.model.plan.Instances;
import org.tenthwise.model.plan.OnDrawing;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.SizeCheck;

class OnDrawingRulesTest {

    private static final String ANOTHER =
            """

            [[step]]
            number = 6
            operation = 10
            name = "Other"
            kind = "look"
            what = "So."
            """;

    @Test
    void whatStandsOnTheDrawingIsRead() {
        Plan plan = PlanText.plan(PlanText.DEPTH
                + """
                balloon = "12A"
                sheet = 2
                drawing_zone = "C4"
                requirement = ".1245±.0005"
                designator = "key"
                """
                + ANOTHER);
        assertEquals(
                new OnDrawing(
                        Optional.of(new BalloonNumber("12A")),
                        Optional.of("2"),
                        Optional.of("C4"),
                        ".1245±.0005",
                        Optional.of("key"),
                        Instances.ONE),
                plan.step(5).drawing());
        assertTrue(plan.isBallooned());
        assertEquals(Optional.of(new BalloonNumber("12A")), plan.balloon(plan.step(5)));
        assertEquals(Optional.empty(), plan.balloon(plan.step(6)));
    }

    @Test
    void withoutBalloonsTheNumberOfACheckIsItsBalloon() {
        Plan plan = PlanText.plan(PlanText.DEPTH + "drawing = \"as drawn\"\n" + ANOTHER);
        assertFalse(plan.isBallooned());
        assertEquals(OnDrawing.words("as drawn"), plan.step(5).drawing());
        assertEquals(Optional.of(new BalloonNumber("5")), plan.balloon(plan.step(5)));
        assertEquals(Optional.of(new BalloonNumber("6")), plan.balloon(plan.step(6)));
    }

    @Test
    void ofSeveralAlikeEachIsReadWhereThePlanSaysNothingElse() {
        Plan plan = PlanText.plan(
                PlanText.DEPTH.replace("places = [\"floor\"]", "count = 4\nreport = \"least-and-greatest\""));
        assertEquals(
                new Instances(4, Optional.empty(), Instances.Report.LEAST_AND_GREATEST),
                plan.step(5).drawing().instances());
        assertEquals(
                List.of("1", "2", "3", "4"),
                ((SizeCheck) plan.step(5).check())
                        .places().stream().map(Place::name).toList());
    }

    @Test
    void oneOfSeveralHasPlacesOfItsOwn() {
        Plan plan = PlanText.plan(PlanText.DEPTH + "class = \"in-process\"\nballoon = 3\ncount = 4\ninstance = 2\n");
        assertEquals(
                new Instances(4, Optional.of(2), Instances.Report.EACH),
                plan.step(5).drawing().instances());
        assertEquals(1, plan.step(5).check().slots().size());
    }

    @Test
    void aCheckOnTheWayMayNameTheBalloonOfAnother() {
        Plan plan = PlanText.plan(PlanText.DEPTH + "balloon = 3\nclass = \"in-process\"\n" + ANOTHER + "balloon = 3\n");
        assertEquals(plan.balloon(plan.step(5)), plan.balloon(plan.step(6)));
    }

    @Test
    void theHeadTellsTheDrawingApartFromThePart() {
        String head = PlanText.HEAD.replace(
                "drawing = \"T-1 sheet 2\"",
                """
                drawing_number = "D-77"
                drawing_revision = "C"
                sheets = 3
                changes = ["change 12", "change 14"]
                route = "R-1 issue 2"
                """);
        Plan plan = assertInstanceOf(PlanReading.Good.class, new PlanReader().read(head + PlanText.DEPTH))
                .plan();
        assertEquals(
                new DrawingInForce(
                        "D-77",
                        Optional.of("D-77"),
                        Optional.of("C"),
                        Optional.of(3),
                        List.of("change 12", "change 14")),
                plan.drawing());
        assertEquals(Optional.of("R-1 issue 2"), plan.route());
        assertEquals("A", plan.part().revision());
    }

    @Test
    void anOlderPlanHasATitleAlone() {
        Plan plan = PlanText.plan(PlanText.DEPTH);
        assertEquals(DrawingInForce.titled("T-1 sheet 2"), plan.drawing());
        assertEquals(Optional.empty(), plan.route());
    }
}
