package org.tenthwise.model.compute.drilling;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/**
 * The drills a deep hole is drilled with one after the other, each led by the hole of the one before.
 *
 * <p>A drill goes as deep as its flutes reach less the chip clearance, the length of flute that must stay out of the
 * hole so that the chips find a way. From stages: each drill takes one stage, the last what is left, and must reach its
 * depth plus the clearance. From the drills at hand, shortest first: each goes from where the one before ended to its
 * reach less the clearance.
 *
 * <p>Depths from the mouth of the hole, exact; the stages join without a gap from the start to the depth.
 *
 * <p>A hole started as deep as it is to be needs no drill and is refused. A drill that gets no deeper than the one
 * before is left in the rack, and so are all after the depth is reached.
 *
 * <p>Source: common practice with sets of long drills: no drill longer than it must be, none started without a lead.
 *
 * @param stages in the order they are drilled; at least one
 */
public record DrillSet(List<Stage> stages) {

    private static final int MOST = 200;

    /**
     * What one drill does.
     *
     * @param leastReach of its flutes from the point
     */
    public record Stage(Length from, Length to, Length leastReach) {

        public Length length() {
            return to.minus(from);
        }
    }

    public DrillSet {
        stages = List.copyOf(stages);
    }

    /**
     * A set to be got together.
     *
     * @param start how deep the hole is already; zero for none
     * @param perDrill how much deeper one drill may go than the one before
     * @throws IllegalArgumentException if the sizes do not make a hole, or it would take more than two hundred drills
     */
    public static DrillSet ofStages(Length depth, Length start, Length perDrill, Length chipClearance) {
        requireHole(depth, start, chipClearance);
        if (perDrill.signum() <= 0) {
            throw new Refused("model.drill-set.stage-gets", perDrill);
        }
        List<Stage> stages = new ArrayList<>();
        for (Length from = start;
                from.isBelow(depth);
                from = stages.get(stages.size() - 1).to()) {
            if (stages.size() >= MOST) {
                throw new Refused("model.drill-set.stages-would", perDrill, MOST, depth);
            }
            Length to = Length.least(List.of(from.plus(perDrill), depth));
            stages.add(new Stage(from, to, to.plus(chipClearance)));
        }
        return new DrillSet(stages);
    }

    /**
     * The drills at hand.
     *
     * @param reaches usable lengths of flute, in any order
     * @throws IllegalArgumentException if the sizes do not make a hole, or the longest drill does not reach the depth
     */
    public static DrillSet ofReaches(Length depth, Length start, List<Length> reaches, Length chipClearance) {
        requireHole(depth, start, chipClearance);
        Length deepest = Length.greatest(reaches).minus(chipClearance);
        if (deepest.isBelow(depth)) {
            throw new Refused("model.drill-set.longest-drill", deepest, chipClearance, depth);
        }
        List<Stage> stages = new ArrayList<>();
        Length from = start;
        for (Length reach : reaches.stream().sorted().toList()) {
            Length to = Length.least(List.of(reach.minus(chipClearance), depth));
            if (to.isAbove(from)) {
                stages.add(new Stage(from, to, to.plus(chipClearance)));
                from = to;
            }
        }
        return new DrillSet(stages);
    }

    /** Whether the last drill takes less than half of what the one before it took: perhaps the set does without it. */
    public boolean endsShort() {
        int last = stages.size() - 1;
        return last > 0
                && stages.get(last)
                        .length()
                        .isBelow(stages.get(last - 1).length().half());
    }

    private static void requireHole(Length depth, Length start, Length chipClearance) {
        if (start.signum() < 0 || !start.isBelow(depth)) {
            throw new Refused("model.drill-set.hole-started", start, depth);
        }
        if (chipClearance.signum() < 0) {
            throw new Refused("model.drill-set.chip-clearance", chipClearance);
        }
    }
}
