package org.tenthwise.model.compute.roundness;

import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;

/**
 * What was read over one turn in one section.
 *
 * @param points movement over the readings by angle
 * @param fit    the circle fitted to them
 * @param swept  movement over the full turn, where it was read
 */
public record Turned(Length points, CircleFit fit, Optional<Length> swept) {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    /** What no moving takes away. */
    public Length formLeft() {
        return FormLeft.of(fit, swept);
    }

    /** Whether points and sweep cannot both be right: no point lies outside a full turn, but for the last place of each of four figures. */
    public boolean contradictsItself(Length lastPlace) {
        return swept.filter(movement -> points.minus(movement).isAbove(lastPlace.times(TWO))).isPresent();
    }
}
