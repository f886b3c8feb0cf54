package org.tenthwise.model.plan;

import java.util.List;
import org.tenthwise.model.words.Word;

/** How the readings of a check become the one size that is judged. */
public enum Combine {

    /** Every reading must be inside; the one nearest to a limit, or furthest out, decides. */
    EACH,
    MEAN,
    LARGEST,
    SMALLEST,
    /** Largest less smallest. */
    RANGE,
    /** Largest less smallest at each place, and of these the greatest: of what an indicator shows over a sweep. */
    GREATEST_RANGE,
    /** Roughness values by the 16 % rule: the largest but those that may lie over decides. */
    SIXTEEN_PERCENT;

    /** Those that sizes are judged by. */
    public static final List<Combine> OF_SIZES = List.of(EACH, MEAN, LARGEST, SMALLEST, RANGE);

    /** Whether it is no size, but how far readings lie apart. */
    public boolean isRange() {
        return this == RANGE || this == GREATEST_RANGE;
    }

    /** How plan files name it. */
    public String key() {
        return Word.of(this);
    }
}
