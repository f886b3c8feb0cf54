package org.tenthwise.model.compute.roughness;

import java.math.BigDecimal;
import java.util.List;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * The maximum rule: no value may lie over the limit.
 *
 * <p>Formula: pass if every value ≤ limit.
 *
 * <p>Values and limit in one unit, exact. A value on the limit is inside. One value can pass; without any it is open.
 * It is measured where the surface looks worst.
 *
 * <p>Source: ISO 4288:1996, 5.3, from memory.
 */
public final class MaximumRule {

    private MaximumRule() {}

    public static RoughnessStanding of(List<BigDecimal> values, BigDecimal limit) {
        if (values.stream().anyMatch(value -> value.compareTo(limit) > 0)) {
            return new RoughnessStanding(VerdictKind.FAIL, 0, 0);
        }
        return values.isEmpty()
                ? new RoughnessStanding(VerdictKind.OPEN, 1, 0)
                : new RoughnessStanding(VerdictKind.PASS, 0, 0);
    }
}
