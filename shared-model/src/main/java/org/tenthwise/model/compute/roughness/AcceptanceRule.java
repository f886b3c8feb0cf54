package org.tenthwise.model.compute.roughness;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How the values of a surface are set against an upper limit of roughness. */
public enum AcceptanceRule {
    /** The usual rule of ISO 4288, where the symbol says nothing else. */
    SIXTEEN_PERCENT("16-percent") {
        @Override
        public RoughnessStanding of(List<BigDecimal> values, BigDecimal limit) {
            return SixteenPercentRule.of(values, limit);
        }
    },
    /** Asked for by <em>max</em> in the symbol. */
    MAX("max") {
        @Override
        public RoughnessStanding of(List<BigDecimal> values, BigDecimal limit) {
            return MaximumRule.of(values, limit);
        }
    };

    private final String key;

    AcceptanceRule(String key) {
        this.key = key;
    }

    /** How plan files and sums name it. */
    public String key() {
        return key;
    }

    public static Optional<AcceptanceRule> ofKey(String key) {
        return Arrays.stream(values()).filter(rule -> rule.key.equals(key)).findFirst();
    }

    /**
     * What the values come to so far.
     *
     * @param values in the order they were measured
     * @param limit in the unit of the values
     */
    public abstract RoughnessStanding of(List<BigDecimal> values, BigDecimal limit);
}
