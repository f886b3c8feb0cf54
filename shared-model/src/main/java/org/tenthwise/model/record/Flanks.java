package org.tenthwise.model.record;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;

/**
 * The flanks of a thread that the same tool cuts, seen from the depth of its groove or from its root: what a cut there
 * does to the pitch diameter.
 *
 * <p>A tool with the form of the thread, fed in by c square to the axis, takes 2 c off the pitch diameter and off the
 * root, both on diameter, and makes the groove deeper by c. It may take no more than lies between the least pitch
 * diameter and its lower limit, the guard band taken off.
 *
 * <p>Source: geometry of a profile moved square to the axis; to measure flanks and root again after each cut, common
 * practice.
 *
 * @param step that measures the pitch diameter over wires
 */
public record Flanks(int step, How how) {

    /** What is known of the pitch diameter, and what that lets come off. */
    public enum How {
        /** The cut that is offered leaves it inside. */
        LEFT_INSIDE,
        /** A later step measures it and has not yet: nobody can tell. The cut is offered all the same. */
        NOT_YET_KNOWN,
        /** It is not measured since the last cut, or nothing is proven of it. No cut is offered. */
        UNKNOWN,
        /** No cut that brings this size in leaves it inside. None is offered. */
        TAKEN_UNDER
    }

    /** What a cut takes off the pitch diameter, more than zero. */
    public static Length comesOff(CheckOfSize size, Length change) {
        Length depth = size.feature().depthOfCut(change.abs());
        return depth.plus(depth);
    }

    boolean forbidCutting() {
        return how == How.UNKNOWN || how == How.TAKEN_UNDER;
    }

    /**
     * Absent where nothing may come off the size here anyway. Where only a spring pass could, there too, as long as
     * nobody can tell whether the pitch diameter has that much.
     *
     * @param wires what is found of the pitch diameter
     * @param offered what may be cut here where no more than so much may come off
     */
    static Optional<Flanks> of(
            Step here, CheckOfSize size, Finding wires, Function<Optional<Length>, Optional<Proposal>> offered) {
        return offered.apply(Optional.empty())
                .filter(free -> free.comesOff(size).isPresent()
                        || free.hasNoAim()
                        || free.isBelowLeastCut() && isUnknown(here, wires))
                .map(free -> new Flanks(wires.step().number(), how(here, size, wires, free, offered)));
    }

    private static How how(
            Step here,
            CheckOfSize size,
            Finding wires,
            Proposal free,
            Function<Optional<Length>, Optional<Proposal>> offered) {
        if (!isKnown(wires)) {
            return isUnknown(here, wires) ? How.UNKNOWN : How.NOT_YET_KNOWN;
        }
        Optional<Length> deepest = deepest(size, wires);
        boolean inside = deepest.isEmpty()
                || offered.apply(deepest)
                        .flatMap(within -> free.atMost(size).isPresent() ? within.comesOff(size) : within.change())
                        .isPresent();
        return inside ? How.LEFT_INSIDE : How.TAKEN_UNDER;
    }

    /** Not so where only a later step measures it. */
    private static boolean isUnknown(Step here, Finding wires) {
        return !isKnown(wires) && wires.step().number() < here.number();
    }

    private static boolean isKnown(Finding wires) {
        return wires.missing() == 0 && wires.showsSizes() && !Plausible.spoils(wires);
    }

    /**
     * The most that may come off the size here before the least pitch diameter is under its lower limit, less than zero
     * where it is already; absent where it has none, or is not known.
     */
    static Optional<Length> deepest(CheckOfSize size, Finding wires) {
        CheckOfSize pitch = wires.check().asSize().orElseThrow();
        Optional<Length> least = pitch.isOne()
                ? wires.value()
                : wires.measured().stream().map(Measured::value).min(Comparator.naturalOrder());
        return pitch.limits()
                .lower()
                .map(Written::length)
                .filter(any -> isKnown(wires))
                .flatMap(limit -> least.map(pitchDiameter -> pitchDiameter.minus(limit)))
                .map(room -> room.minus(pitch.guardBand().length()))
                .map(room -> size.feature().equals(Feature.DEPTH) ? room.half() : room);
    }
}
