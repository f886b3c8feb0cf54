package org.tenthwise.model.plan;

import java.util.Arrays;

/**
 * What a drawing says of how a size is meant, by the letters of ISO 14405-1:2016, table 1, where they stand in a ring
 * behind the tolerance. Without any of them every two-point size must lie inside both limits.
 */
public enum SizeModifier {

    /** Two-point size: each of them; the default. */
    LP(Combine.EACH),
    /** Average size. */
    SA(Combine.MEAN),
    /** Maximum size. */
    SX(Combine.LARGEST),
    /** Minimum size. */
    SN(Combine.SMALLEST),
    /** Range of sizes. */
    SR(Combine.RANGE);

    private final Combine combine;

    SizeModifier(Combine combine) {
        this.combine = combine;
    }

    /** How readings become the size that is meant. */
    public Combine combine() {
        return combine;
    }

    public static SizeModifier of(Combine combine) {
        return Arrays.stream(values())
                .filter(modifier -> modifier.combine == combine)
                .findFirst()
                .orElseThrow();
    }
}
