package org.tenthwise.model.compute.cutting;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.Limits;

/**
 * Between which two cuts every size is inside. All lengths are what comes off the size, so that more metal gone is
 * always more.
 *
 * @param middle middle between the greatest and the least size
 * @param pastSize whether a size has passed its limit already
 * @param least what must come off before the size with most metal is inside; zero or more
 * @param most what may come off before the size with least metal is outside, less than zero where it is already; absent
 *     where no limit bounds it
 * @param other what another size that the tool cuts too lets come off; absent where none binds it
 */
record CutRoom(
        Feature feature, Length middle, boolean pastSize, Length least, Optional<Length> most, Optional<Length> other) {

    static CutRoom of(Feature feature, Limits limits, Length guardBand, List<Length> sizes) {
        Limit metalSide = feature.stillCutBeyond();
        Length greatest = Length.greatest(sizes);
        Length smallest = Length.least(sizes);
        Length mostMetal = metalSide == Limit.UPPER ? greatest : smallest;
        Length leastMetal = metalSide == Limit.UPPER ? smallest : greatest;
        Optional<Length> toPastSize =
                limits.at(metalSide.other()).map(limit -> comesOff(feature, leastMetal, limit.length()));
        Length least = limits.at(metalSide)
                .map(limit -> comesOff(feature, mostMetal, limit.length()).plus(guardBand))
                .filter(needed -> needed.signum() > 0)
                .orElse(Length.ZERO);
        return new CutRoom(
                feature,
                greatest.plus(smallest).half(),
                toPastSize.filter(room -> room.signum() < 0).isPresent(),
                least,
                toPastSize.map(room -> room.minus(guardBand)),
                Optional.empty());
    }

    /** The same where something else lets no more than that come off. */
    CutRoom atMost(Length other) {
        return new CutRoom(
                feature,
                middle,
                pastSize,
                least,
                Optional.of(most.filter(other::isAbove).orElse(other)),
                Optional.of(other));
    }

    EvenCut cut(Length aim, Optional<Length> leastCut, Optional<Length> step) {
        if (pastSize) {
            return new EvenCut.NoCut(EvenCut.Reason.PAST_SIZE, Optional.of(Length.ZERO));
        }
        Length cut = stepped(between(comesOff(feature, middle, aim), leastCut, step), step);
        if (most.filter(cut::isAbove).isPresent()) {
            return new EvenCut.NoCut(EvenCut.Reason.UNEVEN, safe(step));
        }
        if (cut.signum() == 0 || feature.isTooLittle(cut, leastCut)) {
            return new EvenCut.NoCut(EvenCut.Reason.BELOW_LEAST_CUT, safe(step));
        }
        return new EvenCut.Offered(aim, feature.stillCutBeyond() == Limit.UPPER ? cut.negated() : cut);
    }

    /**
     * The cut wanted as far as both bounds let it, and no further than half-way from what is needed to what the other
     * size lets come off, where the tool cuts so little; the least one, which is then too much, where they leave
     * nothing between them.
     */
    private Length between(Length wanted, Optional<Length> leastCut, Optional<Length> step) {
        Length bounded = most.filter(wanted::isAbove).orElse(wanted);
        Length shared = other.map(bound -> least.plus(bound).half())
                .filter(bounded::isAbove)
                .filter(half -> !feature.isTooLittle(stepped(half, step), leastCut))
                .orElse(bounded);
        return shared.isBelow(least) ? least : shared;
    }

    private Length stepped(Length cut, Optional<Length> step) {
        Length rounded = down(cut, step);
        return rounded.isBelow(least) ? down(least, step).plus(step.orElse(Length.ZERO)) : rounded;
    }

    private Optional<Length> safe(Optional<Length> step) {
        return most.map(room -> room.signum() > 0 ? down(room, step) : Length.ZERO);
    }

    /** @param length zero or more */
    private static Length down(Length length, Optional<Length> step) {
        return step.map(one -> {
                    BigDecimal steps = length.millimetres().divideToIntegralValue(one.millimetres());
                    return one.times(steps);
                })
                .orElse(length);
    }

    /** What comes off between two sizes; less than zero where metal would have to be put on. */
    private static Length comesOff(Feature feature, Length from, Length to) {
        return feature.stillCutBeyond() == Limit.UPPER ? from.minus(to) : to.minus(from);
    }
}
