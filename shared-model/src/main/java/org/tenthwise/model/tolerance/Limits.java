package org.tenthwise.model.tolerance;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Refused;

/**
 * The least and the greatest size allowed. One of the two may be absent, not both.
 *
 * @param lower not above {@code upper}
 * @param origin what they were worked out from; absent if they stand in the plan as the drawing writes them
 */
public record Limits(Optional<Written> lower, Optional<Written> upper, Optional<Origin> origin) {

    private static final BigDecimal THREE = new BigDecimal("3");

    public Limits {
        if (lower.isEmpty() && upper.isEmpty()) {
            throw new Refused("model.limits.limits-need");
        }
        if (lower.isPresent()
                && upper.isPresent()
                && lower.get().length().isAbove(upper.get().length())) {
            throw new Refused("model.limits.upper-limit", upper.get(), lower.get());
        }
    }

    /** Limits as the drawing writes them. */
    public Limits(Optional<Written> lower, Optional<Written> upper) {
        this(lower, upper, Optional.empty());
    }

    public static Limits between(Written lower, Written upper) {
        return new Limits(Optional.of(lower), Optional.of(upper));
    }

    public static Limits atMost(Written upper) {
        return new Limits(Optional.empty(), Optional.of(upper));
    }

    public Optional<Written> at(Limit which) {
        return which == Limit.LOWER ? lower : upper;
    }

    /** Upper less lower; absent where one limit is. */
    public Optional<Length> width() {
        return lower.flatMap(l -> upper.map(u -> u.length().minus(l.length())));
    }

    /** Half-way between the limits, or the only limit there is. */
    public Length middle() {
        Length low = lower.or(() -> upper).orElseThrow().length();
        Length high = upper.or(() -> lower).orElseThrow().length();
        return low.plus(high).half();
    }

    /** A third of the tolerance in from one of the limits; the only limit there is where one is missing. */
    public Length third(Limit from) {
        Length near = at(from).or(() -> lower).or(() -> upper).orElseThrow().length();
        Length far = at(from.other()).map(Written::length).orElse(near);
        return near.plus(far.minus(near).dividedBy(THREE));
    }

    /** The most places either limit is written with. */
    public int places() {
        return Stream.of(lower, upper)
                .flatMap(Optional::stream)
                .mapToInt(Written::places)
                .max()
                .orElseThrow();
    }

    public Unit unit() {
        return lower.or(() -> upper).orElseThrow().unit();
    }
}
