package org.tenthwise.app.sums.statistics;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** How figures are written in answers and in the sentences beside them. */
final class Wording {

    private static final MathContext SHORT = new MathContext(3, RoundingMode.HALF_EVEN);

    private Wording() {}

    /** Three figures, for a sentence. */
    static String about(double figure) {
        return new BigDecimal(figure).round(SHORT).toPlainString();
    }

    /** A share as a percentage, rounded away from what one would like: up. */
    static String atMostPercent(double share) {
        return atMostPercent(new BigDecimal(share));
    }

    /** A share as a percentage, rounded away from what one would like: up. */
    static String atMostPercent(BigDecimal share) {
        return share.movePointRight(2).setScale(1, RoundingMode.CEILING).toPlainString() + " %";
    }

    /** A share as a percentage, rounded away from what one would like where every part is a reject: down. */
    static String atLeastPercent(double share) {
        return new BigDecimal(share)
                        .movePointRight(2)
                        .setScale(1, RoundingMode.FLOOR)
                        .toPlainString() + " %";
    }

    /** A share as a percentage with the figures it was given. */
    static String percent(BigDecimal share) {
        return share.movePointRight(2).stripTrailingZeros().toPlainString() + " %";
    }
}
