package org.tenthwise.app.sums;

/** One sum. Has no state: the same given figures have the same answer. */
public interface Sum {

    SumDescription description();

    /**
     * @throws CannotAnswer if something is missing, is not what it should be or does not go together
     * @throws IllegalArgumentException from the formulas of the model, with a sentence for a person
     */
    SumResult of(SumInput given);
}
