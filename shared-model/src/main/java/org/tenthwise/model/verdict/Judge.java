package org.tenthwise.model.verdict;

import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.Limits;

/**
 * Sets a size against its limits.
 *
 * <p>On a limit is a pass under no guard band. With a guard band g, inside by g or more is a pass, outside by more than
 * g is a fail, between the two is unproven (decision rule with guard band, ISO 14253-1; acceptance limit inside by g,
 * JCGM 106, 8.3.2), whichever limit it is. A size proven to be out on the side that can still be cut is <em>cut
 * again</em>.
 */
public final class Judge {

    private final Limits limits;
    private final Length guardBand;
    private final Optional<Limit> stillCutBeyond;

    /**
     * @param guardBand zero or more
     * @param stillCutBeyond the limit beyond which the work can still be cut; absent if it cannot
     */
    public Judge(Limits limits, Length guardBand, Optional<Limit> stillCutBeyond) {
        if (guardBand.signum() < 0) {
            throw new IllegalArgumentException("Guard band %s is less than zero".formatted(guardBand));
        }
        this.limits = limits;
        this.guardBand = guardBand;
        this.stillCutBeyond = stillCutBeyond;
    }

    public Verdict of(Length size) {
        Verdict.Margin margin = margin(size);
        return new Verdict(standing(margin), Optional.of(margin));
    }

    /** Distance to the nearer limit; one that is broken counts as the nearer. */
    private Verdict.Margin margin(Length size) {
        Optional<Length> aboveLower = limits.lower().map(lower -> size.minus(lower.length()));
        Optional<Length> belowUpper = limits.upper().map(upper -> upper.length().minus(size));
        boolean lowerIsNearer = belowUpper.isEmpty()
                || aboveLower.isPresent() && aboveLower.get().compareTo(belowUpper.get()) <= 0;
        Length room = lowerIsNearer ? aboveLower.orElseThrow() : belowUpper.get();
        return new Verdict.Margin(room.abs(), lowerIsNearer ? Limit.LOWER : Limit.UPPER, room.signum() >= 0);
    }

    private VerdictKind standing(Verdict.Margin margin) {
        if (margin.inside()) {
            return margin.distance().isBelow(guardBand) ? VerdictKind.UNPROVEN : VerdictKind.PASS;
        }
        if (!margin.distance().isAbove(guardBand)) {
            return VerdictKind.UNPROVEN;
        }
        return isMetalSide(margin.limit()) ? VerdictKind.CUT_AGAIN : VerdictKind.FAIL;
    }

    /** Whether a size lies outside on a side where nothing is left to cut, proven or not. */
    public boolean isPast(Length size) {
        Verdict.Margin margin = margin(size);
        return !margin.inside() && !isMetalSide(margin.limit());
    }

    /** Whether a size is unproven at the limit beyond which there is metal left. */
    public boolean isUnprovenWithMetalLeft(Length size) {
        Verdict.Margin margin = margin(size);
        return standing(margin) == VerdictKind.UNPROVEN && isMetalSide(margin.limit());
    }

    private boolean isMetalSide(Limit limit) {
        return stillCutBeyond.filter(metal -> metal == limit).isPresent();
    }
}
