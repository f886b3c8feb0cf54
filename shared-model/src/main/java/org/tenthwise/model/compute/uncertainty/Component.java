package org.tenthwise.model.compute.uncertainty;

import java.math.BigDecimal;
import java.util.OptionalInt;
import org.tenthwise.model.words.Refused;

/**
 * One source of uncertainty, as a standard uncertainty.
 *
 * <p>Resolution d: d/√12. Limits ±a, any value between them as likely as another: a/√3; the middle the likeliest: a/√6.
 * A certificate's U with its k: U/k. Scatter s of single readings, n of them averaged: s/√n. A sensitivity c multiplies
 * it by |c|.
 *
 * <p>In the unit of what went in, or in that of the result where a sensitivity brings it there; zero or more.
 *
 * <p>A source of zero adds nothing. One reading (n = 1) rests on a scatter known from before: it says nothing about how
 * well that scatter is known.
 *
 * <p>Source: JCGM 100:2008 (GUM), 4.2.3, 4.3.3, 4.3.7, 4.3.9, F.2.2.1. Where a zero and a reading are both taken from
 * one scale, its resolution counts twice, as two components.
 *
 * @param standard zero or more
 * @param rectangle whether it is as likely to lie in one place between its limits as in another
 * @param degreesOfFreedom how well it is known; absent if as well as need be
 */
public record Component(double standard, boolean rectangle, OptionalInt degreesOfFreedom) {

    /** @param division the least step of the display or the scale */
    public static Component resolution(BigDecimal division) {
        return new Component(notNegative(division) / Math.sqrt(12), true, OptionalInt.empty());
    }

    /** @param halfWidth a of ±a */
    public static Component rectangular(BigDecimal halfWidth) {
        return new Component(notNegative(halfWidth) / Math.sqrt(3), true, OptionalInt.empty());
    }

    /** @param halfWidth a of ±a */
    public static Component triangular(BigDecimal halfWidth) {
        return new Component(notNegative(halfWidth) / Math.sqrt(6), false, OptionalInt.empty());
    }

    /** @param coverageFactor 1 where {@code expanded} is a standard uncertainty already */
    public static Component normal(BigDecimal expanded, BigDecimal coverageFactor) {
        if (coverageFactor.signum() <= 0) {
            throw new Refused("model.component.k-coverage", coverageFactor.toPlainString());
        }
        return new Component(notNegative(expanded) / coverageFactor.doubleValue(), false, OptionalInt.empty());
    }

    /** @param n how many readings are averaged, and, if more than one, how many the scatter was found from */
    public static Component repeat(BigDecimal scatter, int n) {
        if (n < 1) {
            throw new Refused("model.component.n-least", n);
        }
        return new Component(
                notNegative(scatter) / Math.sqrt(n), false, n == 1 ? OptionalInt.empty() : OptionalInt.of(n - 1));
    }

    /** @param sensitivity by how much the result changes for one unit of this source; either sign */
    public Component times(BigDecimal sensitivity) {
        return new Component(standard * Math.abs(sensitivity.doubleValue()), rectangle, degreesOfFreedom);
    }

    private static double notNegative(BigDecimal value) {
        if (value.signum() < 0) {
            throw new Refused("model.component.value-uncertainty", value.toPlainString());
        }
        return value.doubleValue();
    }
}
