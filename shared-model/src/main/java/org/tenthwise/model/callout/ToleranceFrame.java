package org.tenthwise.model.callout;

import java.util.List;
import org.tenthwise.model.tolerance.MaterialModifier;

/**
 * What stands in the frame of a geometrical tolerance besides symbol and zone. Notation: ISO 1101, ASME Y14.5-2018,
 * from memory.
 *
 * @param isRound whether the zone is a cylinder
 * @param modifier behind the zone
 * @param datums letters in their order, a common datum as {@code A-B}
 * @param isPlain whether nothing else stands behind zone or datums: no projected zone, free state, tangent plane, and
 *     no modifier of a datum
 */
public record ToleranceFrame(boolean isRound, MaterialModifier modifier, List<String> datums, boolean isPlain) {

    public ToleranceFrame {
        datums = List.copyOf(datums);
    }
}
