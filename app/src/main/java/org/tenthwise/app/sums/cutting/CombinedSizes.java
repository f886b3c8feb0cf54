package org.tenthwise.app.sums.cutting;

import java.util.List;
import java.util.function.UnaryOperator;
import org.tenthwise.model.quantity.Length;

/** Which of several sizes the limits bind. */
public enum CombinedSizes {
    EACH(sizes -> sizes),
    MEAN(sizes -> List.of(Length.mean(sizes))),
    LARGEST(sizes -> List.of(Length.greatest(sizes))),
    SMALLEST(sizes -> List.of(Length.least(sizes)));

    private final UnaryOperator<List<Length>> bound;

    CombinedSizes(UnaryOperator<List<Length>> bound) {
        this.bound = bound;
    }

    List<Length> of(List<Length> sizes) {
        return bound.apply(sizes);
    }
}
