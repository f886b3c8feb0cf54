package org.tenthwise.app.export;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Shares of a tolerance in a table: rounded, but never so that one seems to lie on a limit, or beyond it, that does
 * not.
 */
final class ShareFigures {

    /** Of a share with 1 on the limit. */
    static final int PLACES_OF_A_SHARE = 4;

    private static final int PLACES_OF_A_PERCENT = 2;
    private static final BigDecimal ON_THE_LIMIT = BigDecimal.valueOf(100);

    private ShareFigures() {}

    /** Of a share with 100 on the limit: two places, without zeros at their end. */
    static String percent(BigDecimal percent) {
        return rounded(percent, ON_THE_LIMIT, PLACES_OF_A_PERCENT);
    }

    /** @param limit the share that lies on a limit */
    static String rounded(BigDecimal share, BigDecimal limit, int places) {
        BigDecimal half = share.setScale(places, RoundingMode.HALF_EVEN);
        int side = share.abs().compareTo(limit);
        BigDecimal said = half.abs().compareTo(limit) == 0 && side != 0
                ? share.setScale(places, side > 0 ? RoundingMode.UP : RoundingMode.DOWN)
                : half;
        return said.signum() == 0 ? "0" : said.stripTrailingZeros().toPlainString();
    }
}
