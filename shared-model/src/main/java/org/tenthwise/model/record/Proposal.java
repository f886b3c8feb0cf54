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

    public Proposal {
        unread = List.copyOf(unread);
    }

    /** The change of the size itself; absent where nothing is offered. */
    public Optional<Length> change() {
        return cut instanceof EvenCut.Offered offered ? Optional.of(offered.change()) : Optional.empty();
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

    /** Whether not the least may come off any more. */
    public boolean leavesNothing() {
        return cut instanceof EvenCut.NoCut refused
                && refused.safe().filter(safe -> safe.signum() == 0).isPresent();
    }

    /**
     * The change of the offset as the register counts it; absent where nothing is offered, and where the register is:
     * there the amount is the change of the size itself.
     */
    public Optional<Length> offset() {
        return register.flatMap(counting -> change().map(counting::counts));
    }
}
