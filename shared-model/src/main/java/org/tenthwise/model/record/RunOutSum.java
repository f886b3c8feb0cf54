package org.tenthwise.model.record;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.compute.roundness.CircleFit;
import org.tenthwise.model.compute.roundness.FullIndicatorMovement;
import org.tenthwise.model.compute.roundness.JawMove;
import org.tenthwise.model.compute.roundness.JawMoves;
import org.tenthwise.model.compute.roundness.Refusal;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.Judge;
import org.tenthwise.model.verdict.Standing;
import org.tenthwise.model.verdict.Verdict;

/**
 * Run-out: the movement against its limit, and where the readings allow it the circle and the moves of the jaws.
 *
 * <p>Points can show that a movement is over its limit, wherever they are taken. That it is within the limit they show only
 * where they go all round: with fewer than three angles, or half a turn without one, the high and the low side may both have
 * been missed, and the check stays unproven. The highest and the lowest over a full turn speak for all of it. Nor is
 * anything within the limit by a figure that is far off: two that are far off alike differ by nothing.
 */
final class RunOutSum {

    private RunOutSum() {
    }

    static RunOutFinding of(Step step, Check.RunOut check, Run.Pass pass) {
        Map<String, Run.Reading> standing = pass.standing();
        boolean swept = check.sweepSlots().stream().anyMatch(slot -> standing.containsKey(slot.key()));
        List<Slot> slots = swept ? check.sweepSlots() : check.slots();
        List<Measured> measured = slots.stream().filter(slot -> standing.containsKey(slot.key()))
                .map(slot -> {
                    Run.Reading reading = standing.get(slot.key());
                    return new Measured(reading, slot, reading.typed().length());
                }).toList();
        int missing = slots.size() - measured.size();
        List<Length> sizes = measured.stream().map(Measured::value).toList();
        Optional<Length> movement = sizes.size() < 2
                ? Optional.empty() : Optional.of(FullIndicatorMovement.of(sizes));

        boolean sound = !Plausible.spoils(check, measured, Optional.empty());
        boolean whole = !swept && missing == 0 && sound;
        List<BigDecimal> angles = check.angles();
        Optional<Refusal> refusal = whole ? CircleFit.refusal(angles) : Optional.empty();
        Optional<CircleFit> fit = whole && refusal.isEmpty()
                ? Optional.of(CircleFit.of(angles, sizes)) : Optional.empty();
        List<JawMove> moves = check.jaws() == 0 ? List.of()
                : fit.map(circle -> JawMoves.of(circle, JawMoves.evenly(check.jaws(), check.firstJaw()))).orElse(List.of());
        return new RunOutFinding(step, check, measured, swept, movement, fit, refusal, moves,
                verdict(check, movement, missing, sound && (swept || CircleFit.refusal(angles).isEmpty())), missing);
    }

    /**
     * A movement over the limit settles the check before the last reading: further readings can only add to it. One point
     * alone, which older plans can ask for, shows no movement at all.
     *
     * @param proves whether the readings speak for the whole turn, and none is far off
     */
    private static Verdict verdict(Check.RunOut check, Optional<Length> movement, int missing, boolean proves) {
        Judge judge = new Judge(Limits.atMost(check.limit()), Length.ZERO, Optional.empty());
        return movement.map(judge::of)
                .filter(verdict -> missing == 0 || verdict.standing() == Standing.FAIL)
                .map(verdict -> verdict.passed() && !proves ? Verdict.plain(Standing.UNPROVEN) : verdict)
                .orElse(Verdict.plain(missing == 0 ? Standing.UNPROVEN : Standing.OPEN));
    }
}
