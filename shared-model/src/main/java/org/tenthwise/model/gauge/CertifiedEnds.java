package org.tenthwise.model.gauge;

import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Refused;

/**
 * The two ends of a limit gauge as its certificate has them. What it really accepts lies between them: less than the
 * tolerance of the part by what the ends are made inside it.
 *
 * <p>An end outside the limits of the part lets through what is out: a GO that is worn, or a NOT GO that was made so.
 * An end on a limit is inside.
 *
 * <p>Source: common practice after the principle of Taylor: the GO end is the limit with the most metal.
 *
 * @param part both limits of the part, of a thread those of its pitch diameter
 */
public record CertifiedEnds(LimitGaugeForm form, Limits part, Written go, Written notGo) {

    /** @throws IllegalArgumentException if an end lies outside the limits, or the two are the wrong way round */
    public CertifiedEnds {
        Written least = form.isInside() ? go : notGo;
        Written greatest = form.isInside() ? notGo : go;
        if (!least.length().isBelow(greatest.length())) {
            throw new Refused(form.isInside() ? "model.limit-gauge.inside" : "model.limit-gauge.outside", go, notGo);
        }
        Written lower = part.lower().orElseThrow(() -> new Refused("model.limit-gauge.both-limits"));
        Written upper = part.upper().orElseThrow(() -> new Refused("model.limit-gauge.both-limits"));
        boolean below = least.length().isBelow(lower.length());
        boolean above = greatest.length().isAbove(upper.length());
        if (form.isInside() ? below : above) {
            throw new Refused("model.limit-gauge.worn", go, form.isInside() ? lower : upper);
        }
        if (form.isInside() ? above : below) {
            throw new Refused("model.limit-gauge.not-go-out", notGo, form.isInside() ? upper : lower);
        }
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
