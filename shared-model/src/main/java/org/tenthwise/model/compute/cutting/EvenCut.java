package org.tenthwise.model.compute.cutting;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.Limits;

/**
 * The one cut that takes the same off all along a wall and leaves every size inside: offered where there is one, else
 * refused with what may come off at the most.
 *
 * <p>A cut c takes c off each size. It must bring all of them inside both limits less the guard band: at least l, what
 * the size with most metal still needs, and at most h, the room of the size with least. Wanted: the middle between the
 * greatest and the least size on the aim; that c, put between l and h, rounded to a step of the register with metal
 * left rather than missing, and where that falls under l the least step from l on.
 *
 * <p>Exact, as a change of the size: on diameter for a bore and an outside, more than zero where the size grows.
 *
 * <p>With one size its own distance to the aim. With one limit the other side is bound by the aim alone. A size past
 * its limit leaves nothing to cut; one that is only within the guard band there is uneven with the rest. A cut of zero
 * is below any least cut.
 *
 * <p>Source: common practice: measure every place, take the same off all of them, and never more than the place with
 * the least metal can give; guard band as in ISO 14253-1.
 */
public sealed interface EvenCut {

    /**
     * Why there is no cut: no even one brings every size in; this tool would rub; metal is missing already; there is
     * one limit and nothing says how far past it.
     */
    enum Reason {
        UNEVEN,
        BELOW_LEAST_CUT,
        PAST_SIZE,
        NO_AIM
    }

    /**
     * @param aim what the middle of the sizes is wanted at; a limit that is nearer, or the step, may keep it from there
     * @param change wanted in the size itself, so that new size = size + change: more than zero for a bore, a width and
     *     a depth, less for an outside diameter
     */
    record Offered(Length aim, Length change) implements EvenCut {}

    /**
     * @param safe the most that may come off, zero or more, on the size, before one of them passes its limit less the
     *     guard band; absent where no limit bounds it
     */
    record NoCut(Reason reason, Optional<Length> safe) implements EvenCut {}

    /**
     * @param leastCut depth of cut on the radius or one wall under which the tool rubs; more than zero
     * @param step least change of the size that can be typed; more than zero
     * @param bound the sizes that the limits bind: that of every place, or the one that is judged where the drawing
     *     makes one of them
     * @throws IllegalArgumentException if no size is given, or the guard band is less than zero, or a least cut or a
     *     step is not more
     */
    static EvenCut of(
            Feature feature,
            Limits limits,
            Length guardBand,
            Length aim,
            Optional<Length> leastCut,
            Optional<Length> step,
            List<Length> bound) {
        return of(feature, limits, guardBand, aim, leastCut, step, bound, Optional.empty());
    }

    /**
     * The same where another size that the tool cuts too lets no more than {@code atMost} come off this one; a cut that
     * would take more is uneven with it. The cut goes half-way at the most from l to there: one on the aim here would
     * leave the other on its limit, for a tool that takes a hair more to scrap it.
     *
     * @param atMost on the size, less than zero where the other is past its limit already; absent where none binds it
     */
    static EvenCut of(
            Feature feature,
            Limits limits,
            Length guardBand,
            Length aim,
            Optional<Length> leastCut,
            Optional<Length> step,
            List<Length> bound,
            Optional<Length> atMost) {
        if (bound.isEmpty()
                || guardBand.signum() < 0
                || leastCut.filter(least -> least.signum() <= 0).isPresent()
                || step.filter(least -> least.signum() <= 0).isPresent()) {
            throw new IllegalArgumentException("No cut follows from sizes %s, guard band %s, least cut %s, step %s"
                    .formatted(bound, guardBand, leastCut, step));
        }
        CutRoom room = CutRoom.of(feature, limits, guardBand, bound);
        return atMost.map(room::atMost).orElse(room).cut(aim, leastCut, step);
    }
}
