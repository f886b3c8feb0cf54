package org.tenthwise.model.compute.thread.limits;

import java.math.BigDecimal;
import java.util.Map;
import org.tenthwise.model.table.Table;
import org.tenthwise.model.words.Refused;

/**
 * Allowance on the pitch diameter of external Acme threads.
 *
 * <p>0.008, 0.006, 0.004 times √Dm for 2G, 3G, 4G, with Dm the middle of the range of nominal diameters; a table.
 *
 * <p>Inches to four places, zero or more. The upper end of a range belongs to it: 5/16 in has the allowance of 1/4 in.
 *
 * <p>Source: ASME B1.5; Machinery's Handbook, 27th ed., table 10, p. 1841. The root of the diameter itself gives other
 * figures, 0.0001 in off for 1 3/4 and 3 in.
 */
final class AcmeAllowance {

    private static final Table RANGES = Table.beside(AcmeAllowance.class, "acme-allowances.csv");

    private AcmeAllowance() {}

    /** @throws IllegalArgumentException if the table does not reach so far */
    static BigDecimal of(BigDecimal diameter, String threadClass) {
        return RANGES.rows().stream()
                .filter(row -> isIn(row, diameter))
                .map(row -> new BigDecimal(row.get(threadClass)))
                .findFirst()
                .orElseThrow(() -> new Refused("model.acme-allowance.diameter-asme", diameter.toPlainString()));
    }

    private static boolean isIn(Map<String, String> row, BigDecimal diameter) {
        return diameter.compareTo(new BigDecimal(row.get("above"))) > 0
                && diameter.compareTo(new BigDecimal(row.get("to"))) <= 0;
    }
}
