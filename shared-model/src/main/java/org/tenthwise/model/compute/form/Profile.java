package org.tenthwise.model.compute.form;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;

/**
 * The mean sizes of a wall, from the least depth to the greatest.
 *
 * @param sizes two or more
 */
record Profile(List<Length> sizes) {

    Length taper() {
        return last().minus(first());
    }

    /** Named by the rule in {@link WallForm#of}. */
    WallShape shape(Length noticeable) {
        if (!differ(sizes, noticeable)) {
            return WallShape.EVEN;
        }
        return threeDepthsOrMore(noticeable).orElseGet(() -> betweenTheEnds(noticeable));
    }

    private Optional<WallShape> threeDepthsOrMore(Length noticeable) {
        if (sizes.size() < 3) {
            return Optional.empty();
        }
        List<Length> rest = sizes.subList(1, sizes.size());
        if (first().minus(Length.greatest(rest)).isAbove(noticeable) && !differ(rest, noticeable)) {
            return Optional.of(WallShape.BELL_MOUTH);
        }
        List<Length> inner = sizes.subList(1, sizes.size() - 1);
        List<Length> ends = List.of(first(), last());
        boolean waist = Length.least(ends).minus(Length.least(inner)).isAbove(noticeable);
        boolean barrel = Length.greatest(inner).minus(Length.greatest(ends)).isAbove(noticeable);
        if (waist && barrel) {
            return Optional.of(WallShape.UNEVEN);
        }
        if (waist) {
            return Optional.of(WallShape.WAIST);
        }
        return barrel ? Optional.of(WallShape.BARREL) : Optional.empty();
    }

    private WallShape betweenTheEnds(Length noticeable) {
        if (!taper().abs().isAbove(noticeable)) {
            return WallShape.UNEVEN;
        }
        return taper().signum() < 0 ? WallShape.TAPER_IN : WallShape.TAPER_OUT;
    }

    private Length first() {
        return sizes.get(0);
    }

    private Length last() {
        return sizes.get(sizes.size() - 1);
    }

    private static boolean differ(List<Length> sizes, Length noticeable) {
        return Length.greatest(sizes).minus(Length.least(sizes)).isAbove(noticeable);
    }
}
