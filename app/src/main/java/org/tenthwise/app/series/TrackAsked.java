package org.tenthwise.app.series;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;

/**
 * What is to be found out of one figure of each part.
 *
 * @param places of the parts in their segment, from 1
 * @param points the parts
 * @param figures in the unit of the limits
 * @param lower limit they are held against
 * @param upper limit they are held against
 * @param required index of capability
 */
record TrackAsked(
        Track.Side side,
        List<Integer> places,
        List<PartPoint> points,
        List<BigDecimal> figures,
        Optional<Length> lower,
        Optional<Length> upper,
        BigDecimal required) {

    int n() {
        return figures.size();
    }

    int lastPlace() {
        return places.get(places.size() - 1);
    }

    Optional<BigDecimal> lowerFigure() {
        return lower.map(points.get(0)::figure);
    }

    Optional<BigDecimal> upperFigure() {
        return upper.map(points.get(0)::figure);
    }

    /** The limit that sizes go to which grow, or shrink, less the uncertainty of a size; absent where there is none. */
    Optional<BigDecimal> limitAhead(boolean growing) {
        Length uncertain = points.stream()
                .flatMap(point -> point.found().expanded().stream())
                .filter(known -> known.kind().equals(points.get(0).unit().kind()))
                .max(Comparator.naturalOrder())
                .orElse(new Length(BigDecimal.ZERO, points.get(0).unit().kind()));
        return (growing ? upper.map(limit -> limit.minus(uncertain)) : lower.map(limit -> limit.plus(uncertain)))
                .map(points.get(0)::figure);
    }

    /** Whether an index of capability can say anything of it at all. */
    boolean canHaveAnIndex() {
        boolean wide = lower.isEmpty() || upper.isEmpty() || lower.get().isBelow(upper.get());
        return wide && points.stream().allMatch(PartPoint::isIndexed);
    }
}
