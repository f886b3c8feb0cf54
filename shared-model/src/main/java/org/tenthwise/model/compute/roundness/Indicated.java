package org.tenthwise.model.compute.roundness;

import java.util.Optional;
import org.tenthwise.model.quantity.Length;

/**
 * What was read over one turn in one section.
 *
 * @param points movement over the readings by angle
 * @param fit the circle fitted to them
 * @param swept movement over the full turn, where it was read
 * @param unsure how much points may show beyond the turn all the same: the last place of either, together
 */
public record Indicated(Length points, CircleFit fit, Optional<Length> swept, Length unsure) {

    /** What no moving takes away. */
    public Length formLeft() {
        return FormLeft.of(fit, swept);
    }

    /** Whether points and sweep cannot both be right: no point lies outside a full turn. */
    public boolean contradictsItself() {
        return swept.filter(movement -> points.minus(movement).isAbove(unsure)).isPresent();
    }
}
