package org.tenthwise.model.gauge;

import java.math.BigDecimal;
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
}
