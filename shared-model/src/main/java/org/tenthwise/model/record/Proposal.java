package org.tenthwise.model.record;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.cutting.EvenCut;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.quantity.Length;

/**
 * What may be cut next.
 *
 * @param cut one even cut that brings every place in, or why there is none
 * @param register how the machine counts across the axis; absent where that is not known, and for a width or a depth
 * @param unread places that nobody read: someone signed to cut all the same
 */
public record Proposal(EvenCut cut, Optional<Register> register, List<Slot> unread) {

    /** What is advised of it. */
    public enum Way {
        /** One even cut brings every place in. */
        EVEN_CUT,
        /** None does, and no more than so much may come off. */
        AT_MOST,
        /** Metal is left, and how much comes off is for whoever cuts: the plan names no aim past the only limit. */
        PAST_THE_LIMIT,
        /** The same offset once more. */
        SPRING_PASS,
        /** Nothing that this tool could take off may come off. */
        NONE
    }

    public Proposal {
        unread = List.copyOf(unread);
    }

    /** The change of the size itself; absent where nothing is offered. */
    public Optional<Length> change() {
        return cut instanceof EvenCut.Offered offered ? Optional.of(offered.change()) : Optional.empty();
    }

    /** Whether so little is wanted that this tool would rub. */
    boolean isBelowLeastCut() {
        return cut instanceof EvenCut.NoCut refused && refused.reason() == EvenCut.Reason.BELOW_LEAST_CUT;
    }

    /** Whether metal is left, and nothing says how far past the only limit the cut is to go. */
    boolean hasNoAim() {
        return cut instanceof EvenCut.NoCut refused && refused.reason() == EvenCut.Reason.NO_AIM;
    }

    /**
     * The most that may come off a size where nothing is offered and that much can be cut, on the size; absent
     * otherwise.
     */
    Optional<Length> atMost(CheckOfSize size) {
        return cut instanceof EvenCut.NoCut refused && refused.reason() == EvenCut.Reason.UNEVEN
                ? refused.safe().filter(safe -> safe.signum() > 0 && !size.isTooLittleToCut(safe))
                : Optional.empty();
    }

    /**
     * What comes off a size by it, more than zero: what is offered, or the most where nothing is; absent where nothing
     * may come off.
     */
    public Optional<Length> comesOff(CheckOfSize size) {
        return change().map(Length::abs).or(() -> atMost(size));
    }

    /**
     * What is advised for a size. A spring pass takes off what tool and work gave way by at the last cut: never more
     * than that left standing of what was asked, and where nobody can tell that, less than the least that the tool
     * cuts. It is advised only where the place with the least metal can give so much, and where there is anything to
     * take.
     *
     * <p>Source: common practice.
     *
     * @param last what the last cut took off; absent where nobody can tell
     */
    public Way way(CheckOfSize size, Optional<CutSoFar> last) {
        if (change().isPresent()) {
            return Way.EVEN_CUT;
        }
        if (atMost(size).isPresent()) {
            return Way.AT_MOST;
        }
        if (hasNoAim()) {
            return Way.PAST_THE_LIMIT;
        }
        return cut instanceof EvenCut.NoCut refused
                        && isBelowLeastCut()
                        && leavesASpringPass(size, refused.safe(), last.flatMap(CutSoFar::leftStanding))
                ? Way.SPRING_PASS
                : Way.NONE;
    }

    private static boolean leavesASpringPass(CheckOfSize size, Optional<Length> safe, Optional<Length> standing) {
        return standing.map(
                        left -> left.signum() > 0 && safe.filter(left::isAbove).isEmpty())
                .orElseGet(() -> safe.filter(most -> most.signum() == 0 || size.isTooLittleToCut(most))
                        .isEmpty());
    }

    /**
     * The change of the offset as the register counts it; absent where nothing is offered, and where the register is:
     * there the amount is the change of the size itself.
     */
    public Optional<Length> offset() {
        return register.flatMap(counting -> change().map(counting::counts));
    }
}
