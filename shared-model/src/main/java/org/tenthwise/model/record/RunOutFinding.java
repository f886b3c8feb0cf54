package org.tenthwise.model.record;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.roundness.CircleFit;
import org.tenthwise.model.compute.roundness.Refusal;
import org.tenthwise.model.compute.roundness.JawMove;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.verdict.Verdict;

/**
 * A run-out check.
 *
 * @param swept    whether it was read as the highest and the lowest over a full turn
 * @param movement full indicator movement over the readings so far; absent under two readings
 * @param fit      the circle fitted to the readings; absent while readings are missing, for a sweep, and where refused
 * @param refusal  why no circle was fitted to a full set of readings
 * @param jawMoves how to move the jaws; empty where there is no fit or nothing can be moved
 */
public record RunOutFinding(Step step, Check.RunOut check, List<Measured> measured, boolean swept,
                            Optional<Length> movement, Optional<CircleFit> fit, Optional<Refusal> refusal,
                            List<JawMove> jawMoves, Verdict verdict, int missing) implements Finding {

    public RunOutFinding {
        measured = List.copyOf(measured);
        jawMoves = List.copyOf(jawMoves);
    }
}
