package org.tenthwise.model.gauge;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Refused;

/**
 * How far a measured size may lie from the true one, for one way of measuring.
 *
 * @param name of the way of measuring, as the plan calls it
 * @param expanded half the width of the interval, more than zero
 * @param coverageFactor expanded uncertainty over standard uncertainty, more than zero; 2 for about 95 %
 */
public record Uncertainty(String name, Written expanded, BigDecimal coverageFactor) {

    public Uncertainty {
        if (expanded.figure().signum() <= 0 || coverageFactor.signum() <= 0) {
            throw new Refused("model.uncertainty.uncertainty-coverage", expanded, coverageFactor.toPlainString());
        }
    }

    /**
     * The expanded uncertainty with one source more, at the same coverage factor.
     *
     * <p>U = k √((U₀ / k)² + u²).
     *
     * <p>Source: JCGM 100:2008 (GUM), 5.1.2 for sources that do not depend on one another, and 6.2.1.
     *
     * @param standard its standard uncertainty, zero or more; zero leaves it as it is
     */
    public Length expandedWith(Length standard) {
        return standard.signum() == 0
                ? expanded.length()
                : Length.rootOfSquares(expanded.length(), standard.times(coverageFactor));
    }
}
