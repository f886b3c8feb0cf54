package org.tenthwise.model.gauge;

import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Refused;

/**
 * The two ends of a limit gauge as its certificate has them. What it really accepts lies between them: less than the
 * tolerance of the part by what the ends are made inside it.
 *
 * <p>An end outside the limits of the part lets through what is out: a GO that is worn, or a NOT GO that was made so. A
 * plug worn under the least bore enters a bore that is too small, a ring worn over the greatest shaft goes over one
 * that is too big. What passes such a gauge is proven by nothing; what does not pass is out all the same. An end on a
 * limit is inside.
 *
 * <p>Source: common practice after the principle of Taylor: the GO end is the limit with the most metal. Standards of
 * limit gauges that let a GO wear a little past the limit (ISO 1938-1, from memory) share that risk out by agreement;
 * here nothing is proven by it.
 *
 * @param part both limits of the part, of a thread those of its pitch diameter
 */
public record CertifiedEnds(LimitGaugeForm form, Limits part, Written go, Written notGo) {

    /**
     * @throws IllegalArgumentException if the two are the wrong way round, or one lies further outside the limits than
     *     the part has tolerance: that is a slip, or the gauge of another part
     */
    public CertifiedEnds {
        Length least = (form.isInside() ? go : notGo).length();
        Length greatest = (form.isInside() ? notGo : go).length();
        if (!least.isBelow(greatest)) {
            throw new Refused(form.isInside() ? "model.limit-gauge.inside" : "model.limit-gauge.outside", go, notGo);
        }
        Length width = part.width().orElseThrow(() -> new Refused("model.limit-gauge.both-limits"));
        for (Limit limit : Limit.values()) {
            Written end = form.isInside() == (limit == Limit.LOWER) ? go : notGo;
            Written bound = part.at(limit).orElseThrow();
            if (past(end, bound, limit).isAbove(width)) {
                throw new Refused("model.limit-gauge.another", end, bound);
            }
        }
    }

    /** An end that lies outside the limit it stands for: work so much too small or too big passes it. */
    public record Past(boolean isGo, Written end, Limit limit, Written by) {}

    /** The ends outside their limits, the GO before the NOT GO; empty where a pass proves the size. */
    public List<Past> past() {
        return Stream.of(past(true), past(false)).flatMap(Optional::stream).toList();
    }

    private Optional<Past> past(boolean isGo) {
        Limit limit = form.isInside() == isGo ? Limit.LOWER : Limit.UPPER;
        Written end = isGo ? go : notGo;
        Written bound = part.at(limit).orElseThrow();
        Length by = past(end, bound, limit);
        int places = Math.max(end.places(), bound.places());
        return by.signum() > 0
                ? Optional.of(new Past(
                        isGo, end, limit, Written.of(by.in(end.unit()).setScale(places, RoundingMode.UP), end.unit())))
                : Optional.empty();
    }

    /** More than zero outside. */
    private static Length past(Written end, Written bound, Limit limit) {
        Length above = end.length().minus(bound.length());
        return limit == Limit.UPPER ? above : above.negated();
    }

    /** The least size that passes both ends. */
    public Written least() {
        return form.isInside() ? go : notGo;
    }

    /** The greatest size that passes both ends. */
    public Written greatest() {
        return form.isInside() ? notGo : go;
    }
}
