package org.tenthwise.checklists.editing;

import java.math.BigDecimal;

/**
 * A stretch of a profile as a drawing dimensions it, with the places it was typed with.
 *
 * @param diameter at its left end, 0 or more; 0 all along the inside where the part is solid
 * @param length along the axis, above 0
 * @param end diameter at its right end; another one for a taper
 */
public record ProfileElement(BigDecimal diameter, BigDecimal length, BigDecimal end) {

    public ProfileElement {
        if (diameter.signum() < 0 || end.signum() < 0 || length.signum() <= 0) {
            throw new IllegalArgumentException("No element: %s × %s to %s".formatted(diameter, length, end));
        }
    }

    public boolean isTaper() {
        return diameter.compareTo(end) != 0;
    }

    /** Whether there is nothing of it: the axis itself. */
    public boolean isSolid() {
        return diameter.signum() == 0 && end.signum() == 0;
    }
}
