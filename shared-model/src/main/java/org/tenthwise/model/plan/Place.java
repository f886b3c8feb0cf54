package org.tenthwise.model.plan;

import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.model.quantity.Written;

/**
 * Where a reading is taken.
 *
 * @param name for people: "at 8, 0°"
 * @param depth distance from the face or the top, where the place has one
 * @param angle degrees round the part, or round the bore, where the place has one
 */
public record Place(String name, Optional<Written> depth, Optional<BigDecimal> angle) {

    public static Place named(String name) {
        return new Place(name, Optional.empty(), Optional.empty());
    }
}
