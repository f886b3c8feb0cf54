package org.tenthwise.model.compute.roundness;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Length;

/**
 * Whether moving the work in the chuck can cure its run-out.
 *
 * <p>In vain where 2 · residual of the fitted circle &gt; indicator movement: then more than half of what the indicator
 * shows is the form of the work, and stays wherever the work is moved.
 *
 * <p>No unit; exact.
 *
 * <p>Exactly half is still worth moving. Three readings leave no residual and are never found in vain, since they do
 * not show the form; nor are readings that do not move at all.
 *
 * <p>Source: common practice; the split into eccentricity and residual is that of {@link CircleFit}.
 */
public final class Rechucking {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    private Rechucking() {}

    /**
     * @param residual what {@link CircleFit} leaves over, greatest less least
     * @param movement greatest less least reading
     */
    public static boolean isInVain(Length residual, Length movement) {
        return residual.times(TWO).isAbove(movement);
    }
}
