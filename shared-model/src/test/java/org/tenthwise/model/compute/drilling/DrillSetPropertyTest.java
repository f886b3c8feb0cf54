package org.tenthwise.model.compute.drilling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.tenthwise.model.quantity.Length;

/** What holds for every set of drills: no gap, and every drill long enough. */
class DrillSetPropertyTest {

    @Property
    void stagesCoverTheDepthWithoutAGap(
            @ForAll @BigRange(min = "20", max = "900") @Scale(2) BigDecimal depth,
            @ForAll @BigRange(min = "0", max = "19") @Scale(2) BigDecimal start,
            @ForAll @BigRange(min = "10", max = "300") @Scale(2) BigDecimal perDrill,
            @ForAll @BigRange(min = "0", max = "50") @Scale(2) BigDecimal clearance) {
        DrillSet set =
                DrillSet.ofStages(new Length(depth), new Length(start), new Length(perDrill), new Length(clearance));
        covers(set, new Length(start), new Length(depth));
        set.stages().forEach(stage -> {
            assertEquals(stage.to().plus(new Length(clearance)), stage.leastReach());
            assertTrue(!stage.length().isAbove(new Length(perDrill)));
        });
    }

    @Property
    void drillsAtHandCoverTheDepthAndEachReachesItsOwn(
            @ForAll @Size(max = 6) List<@BigRange(min = "5", max = "900") @Scale(2) BigDecimal> more,
            @ForAll @BigRange(min = "20", max = "900") @Scale(2) BigDecimal depth,
            @ForAll @BigRange(min = "0", max = "19") @Scale(2) BigDecimal start,
            @ForAll @BigRange(min = "0", max = "50") @Scale(2) BigDecimal clearance) {
        List<Length> reaches = new ArrayList<>(more.stream().map(Length::new).toList());
        reaches.add(new Length(depth).plus(new Length(clearance)));
        DrillSet set = DrillSet.ofReaches(new Length(depth), new Length(start), reaches, new Length(clearance));
        covers(set, new Length(start), new Length(depth));
        assertTrue(set.stages().size() <= reaches.size());
        set.stages()
                .forEach(stage -> assertTrue(reaches.stream()
                        .anyMatch(reach -> !reach.isBelow(stage.leastReach())
                                && (stage.to().equals(new Length(depth)) || reach.equals(stage.leastReach())))));
    }

    @Property
    void pecksGoDeeperEachTimeAndEndAtTheDepth(
            @ForAll @BigRange(min = "1", max = "300") @Scale(2) BigDecimal depth,
            @ForAll @BigRange(min = "1", max = "30") @Scale(2) BigDecimal first,
            @ForAll @BigRange(min = "1", max = "30") @Scale(2) BigDecimal step,
            @ForAll @BigRange(min = "0.1", max = "1") @Scale(2) BigDecimal shrink) {
        List<Length> depths = Pecks.of(
                        new Length(depth), new Length(first), new Length(step), shrink, new Length(BigDecimal.ONE))
                .depths();
        assertEquals(new Length(depth), depths.get(depths.size() - 1));
        for (int i = 1; i < depths.size(); i++) {
            Length deeper = depths.get(i).minus(depths.get(i - 1));
            assertTrue(deeper.signum() > 0 && !deeper.isAbove(new Length(step)));
        }
    }

    private static void covers(DrillSet set, Length start, Length depth) {
        Length at = start;
        for (DrillSet.Stage stage : set.stages()) {
            assertEquals(at, stage.from());
            assertTrue(stage.to().isAbove(stage.from()));
            at = stage.to();
        }
        assertEquals(depth, at);
    }
}
