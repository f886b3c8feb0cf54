package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

/**
 * A run-out at two sections, as files tell it. Figures by hand: off centre by 0.030 towards jaw 1, by 0.050 far out.
 */
class RunOutRecordTest {

    private static Evidence evidence() {
        Plan plan = InventedPlans.spindle(InventedPlans.NEAR_AND_FAR);
        Records.Walk walk = new Records.Walk(plan, "Setter 1")
                .add(new Event.Begun(plan.part(), "1", "L-1", "Lathe 4", plan.source()));
        Stream.of(
                        "highest 0.031",
                        "lowest -0.030",
                        "far:highest 0.050",
                        "far:lowest -0.051",
                        "1.1 0.030",
                        "2.1 0.000",
                        "3.1 -0.030",
                        "4.1 0.000",
                        "far:1.1 0.050",
                        "far:2.1 0.000",
                        "far:3.1 -0.050",
                        "far:4.1 0.000")
                .map(read -> read.split(" "))
                .forEach(read ->
                        walk.add(new StepEvent.ReadingTaken(1, read[0], new Written(read[1], Unit.MILLIMETRE))));
        return walk.evidence();
    }

    @Test
    void sectionBySectionTheTurnIsToldBesideWhatTheReadingsByAngleShow() {
        JsonNode step = ReadBack.json(evidence()).at("/result/characteristics/0");
        assertEquals("four-jaw", step.path("holding").textValue());
        assertEquals("30.0", step.at("/sections/0/from-jaws").textValue());
        JsonNode pass = step.at("/passes/0");
        assertEquals("0.101", pass.path("value").textValue());
        assertEquals("0.100", pass.path("coaxial-error").textValue());
        assertEquals("0.030", pass.path("eccentricity").textValue(), "nearest to the jaws, where it stood before");
        assertEquals(
                List.of("near 0.061 0.060 0.060 0.030 0", "far 0.101 0.100 0.100 0.050 0"),
                StreamSupport.stream(pass.path("sections").spliterator(), false)
                        .map(at -> String.join(
                                " ",
                                at.path("section").textValue(),
                                at.path("movement-over-a-turn").textValue(),
                                at.path("movement-by-angle").textValue(),
                                at.path("turn-by-circle").textValue(),
                                at.path("eccentricity").textValue(),
                                at.path("high-at-degrees").textValue()))
                        .toList());
        assertEquals("highest, far", pass.at("/readings/2/place").textValue());
    }

    @Test
    void everyRowOfTheTableHasItsSectionAndItsDistanceFromTheJaws() {
        List<String> rows = ReadBack.rows(evidence()).stream()
                .map(row -> String.join(
                        " ",
                        row.get("holding"),
                        row.get("jaw-1-at"),
                        row.get("section"),
                        row.get("from-jaws"),
                        row.get("place"),
                        row.get("size")))
                .toList();
        assertEquals(12, rows.size());
        assertEquals(
                List.of(
                        "four-jaw 0 near 30.0 highest, near 0.031",
                        "four-jaw 0 far 140 lowest, far -0.051",
                        "four-jaw 0 far 140 270°, far 0.000"),
                List.of(rows.get(0), rows.get(3), rows.get(11)));
    }
}
