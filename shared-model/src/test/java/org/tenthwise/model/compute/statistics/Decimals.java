package org.tenthwise.model.compute.statistics;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

/** Readings as a test writes them. */
final class Decimals {

    private Decimals() {}

    /** Decimals with blanks between. */
    static List<BigDecimal> of(String texts) {
        return Arrays.stream(texts.strip().split("\\s+")).map(BigDecimal::new).toList();
    }
}
