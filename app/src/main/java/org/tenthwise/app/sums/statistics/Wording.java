package org.tenthwise.app.sums.statistics;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** How figures are written in answers and in the sentences beside them. */
final class Wording {

    private static final MathContext SHORT = new MathContext(3, RoundingMode.HALF_EVEN);

    private Wording() {}

    /** Three figures, for a sentence. */
    static BigDecimal about(double figure) {
        return new BigDecimal(figure).round(SHORT);
    }

    /** A share as a percentage, rounded away from what one would like: up. */
    static BigDecimal atMostPercent(double share) {
        return atMostPercent(new BigDecimal(share));
    }

    /** A share as a percentage, rounded away from what one would like: up. */
    static BigDecimal atMostPercent(BigDecimal share) {
        return share.movePointRight(2).setScale(1, RoundingMode.CEILING);
    }

    /** A share as a percentage, rounded away from what one would like where every part is a reject: down. */
    static BigDecimal atLeastPercent(double share) {
        return new BigDecimal(share).movePointRight(2).setScale(1, RoundingMode.FLOOR);
    }

    /** A share as a percentage with the figures it was given. */
    static BigDecimal percent(BigDecimal share) {
        return share.movePointRight(2).stripTrailingZeros();
    }
}
