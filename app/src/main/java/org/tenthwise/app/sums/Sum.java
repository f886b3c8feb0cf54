package org.tenthwise.app.sums;

import java.util.Set;

/** One sum by its name. Has no state: the same given figures have the same answer. */
public interface Sum {

    /** Small letters and hyphens, as the batch calls it. */
    String name();

    /** Every key it understands beside {@code unit}. */
    Set<String> keys();

    /**
     * @throws CannotAnswer if something is missing, is not what it should be or does not go together
     * @throws IllegalArgumentException from the formulas of the model, with a sentence for a person
     */
    SumResult of(SumInput given);
}
