package org.tenthwise.model.compute.uncertainty;

import java.math.BigDecimal;
import java.util.OptionalDouble;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Refused;

/**
 * How many times the uncertainty goes into the tolerance.
 *
 * <p>(upper − lower) / (2 U), U being the expanded uncertainty for about 95 %: the whole tolerance against the whole
 * width of the uncertainty. With k = 2 the same figure is the measurement capability index T / (4 u).
 *
 * <p>No unit; zero or more.
 *
 * <p>Absent where there is one limit only: such a tolerance has no width. Limits that are equal give zero.
 *
 * <p>Source: ANSI/NCSL Z540.3, test uncertainty ratio; ASME B89.7.3.1, N:1 rule; JCGM 106:2012, 7.6.3. Four is the
 * ratio usually asked for.
 */
public final class UncertaintyRatio {

    private UncertaintyRatio() {}

    /**
     * @throws IllegalArgumentException unless {@code expanded} is more than zero, and an angle where the limits are of
     *     one
     */
    public static OptionalDouble of(Limits limits, Length expanded) {
        if (expanded.signum() <= 0) {
            throw new Refused("model.uncertainty-ratio.expanded-uncertainty", expanded);
        }
        return limits.width()
                .map(width -> OptionalDouble.of(ratio(width, expanded.times(BigDecimal.valueOf(2)))))
                .orElse(OptionalDouble.empty());
    }

    private static double ratio(Length width, Length of) {
        return width.base().doubleValue() / of.sameKind(width.kind()).base().doubleValue();
    }
}
