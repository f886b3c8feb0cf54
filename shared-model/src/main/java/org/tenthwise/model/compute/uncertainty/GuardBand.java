package org.tenthwise.model.compute.uncertainty;

import java.math.BigDecimal;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Refused;

/**
 * How far inside a limit a size has to be, to conform with a stated probability.
 *
 * <p>Width = z · u, with z the point of the normal distribution that the probability lies below and u the standard
 * uncertainty.
 *
 * <p>A length to 1 nm, zero or more.
 *
 * <p>A probability of one half needs no band. Where the other limit is near, the probability at the edge of the band is
 * a little less than stated.
 *
 * <p>Source: JCGM 106:2012, 8.3.2 and table 1 (one-sided z); ISO 14253-1:2017 takes 95 % unless agreed otherwise, which
 * is 1.65 u. A band of the whole U = 2 u stands for 97.7 % (ILAC-G8:09/2019).
 */
public final class GuardBand {

    private static final BigDecimal HALF = new BigDecimal("0.5");
    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    private GuardBand() {}

    /**
     * @throws IllegalArgumentException for a probability of less than one half or of one, or an uncertainty of less
     *     than zero
     */
    public static Length width(BigDecimal probability, Length standardUncertainty) {
        if (probability.compareTo(HALF) < 0 || probability.compareTo(BigDecimal.ONE) >= 0) {
            throw new Refused("model.guard-band.probability-guard", probability.toPlainString());
        }
        if (standardUncertainty.signum() < 0) {
            throw new Refused("model.guard-band.standard-uncertainty", standardUncertainty);
        }
        double steps = NormalDistribution.of(0, 1).inverseCumulativeProbability(probability.doubleValue());
        return Nanometres.round(steps * Nanometres.of(standardUncertainty));
    }

    /** Whether bands inside both limits overlap, so that no size at all would pass. */
    public static boolean leavesNothing(Limits limits, Length guardBand) {
        return limits.width()
                .filter(width -> guardBand.times(TWO).isAbove(width))
                .isPresent();
    }
}
