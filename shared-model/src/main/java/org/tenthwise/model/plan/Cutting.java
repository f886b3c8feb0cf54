package org.tenthwise.model.plan;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/**
 * What a plan says of the cut that brings a size in.
 *
 * @param aim absent where the plan leaves it to the machine's usual one, and where that is not known to the middle
 * @param leastCut least depth of cut, on the radius or a wall, under which this tool rubs in this material; more than
 *     zero; absent where the plan does not say
 * @param offsetStep least step of the register, as the register counts; more than zero; absent where the plan does not
 *     say
 */
public record Cutting(Optional<Aim> aim, Optional<Written> leastCut, Optional<Written> offsetStep) {

    /** Nothing said. */
    public static final Cutting UNSAID = new Cutting(Optional.empty(), Optional.empty(), Optional.empty());

    /** The least step of the register of most machines; common practice. */
    private static final Map<Unit, Written> USUAL_STEP = Map.of(
            Unit.MILLIMETRE,
            Written.of(new BigDecimal("0.001"), Unit.MILLIMETRE),
            Unit.INCH,
            Written.of(new BigDecimal("0.0001"), Unit.INCH));

    /**
     * The least step to reckon with, as the register counts: that of most machines in {@code unit} where the plan does
     * not say.
     */
    public Written stepToCount(Unit unit) {
        return offsetStep.orElseGet(() -> USUAL_STEP.get(unit));
    }
}
