package org.tenthwise.model.compute.chain;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/**
 * What the tolerances of parts, or of sizes of one part, in a row come to.
 *
 * <p>Worst: Σ t. Root sum of squares: √(Σ t²).
 *
 * <p>Each t is half a tolerance, as in ±t, zero or more; so is what comes out. The worst is exact, the root to 1e-12
 * mm.
 *
 * <p>One tolerance alone is both. The root sum of squares takes sizes that are in the middle on average and do not
 * depend on one another: it is for planning many assemblies, and no verdict on one part.
 *
 * <p>Source: common practice; ficientdesign.com, page on tolerance stack-up analysis, read in November 2026.
 *
 * @param worst with every size at the wrong end of its tolerance
 * @param rootSumSquare what is seldom exceeded
 */
public record ToleranceChain(Length worst, Length rootSumSquare) {

    private static final int PLACES_OF_A_ROOT = 12;

    /** @throws IllegalArgumentException if there are none, or one is less than zero */
    public static ToleranceChain of(List<Length> tolerances) {
        if (tolerances.isEmpty() || tolerances.stream().anyMatch(each -> each.signum() < 0)) {
            throw new Refused("model.tolerance-chain.less-than-zero");
        }
        BigDecimal squares = tolerances.stream()
                .map(each -> each.millimetres().multiply(each.millimetres()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal root = squares.sqrt(MathContext.DECIMAL128).setScale(PLACES_OF_A_ROOT, RoundingMode.HALF_EVEN);
        return new ToleranceChain(tolerances.stream().reduce(Length.ZERO, Length::plus), new Length(root));
    }
}
