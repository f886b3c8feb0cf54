package org.tenthwise.model.tolerance;

import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Refused;

/**
 * What a drawing sets for every dimension without a tolerance of its own: a class of a standard, or a block of figures
 * in its title block. It holds for no basic and no reference dimension, and for none with one limit.
 */
public sealed interface GeneralTolerance permits ClassTolerance, BlockTolerance {

    /**
     * How far off either way a size may be; absent where this says nothing of it.
     *
     * @param nominal with its places as drawn, more than zero
     */
    Optional<Written> onSize(Written nominal);

    /** The same for a size the drawing has as a fraction. */
    Optional<Written> onFraction(Written nominal);

    /** The same for a radius or the leg of a chamfer. */
    Optional<Written> onRadius(Written nominal);

    /**
     * The same for an angle, in a unit of angle.
     *
     * @param shorterLeg of the two that make the angle; absent where it is not known
     */
    Optional<Written> onAngle(Optional<Length> shorterLeg);

    /** As the drawing has it. */
    String text();

    /**
     * Takes {@code ISO 2768-m} or {@code .X ±.1 .XX ±.01 ANGLES ±1°}.
     *
     * @param unit of the drawing
     * @throws Refused if {@code text} is neither, or is of the standard and the drawing is in inches
     */
    static GeneralTolerance ofText(String text, Unit unit) {
        return ClassTolerance.read(text, unit)
                .<GeneralTolerance>map(standard -> standard)
                .orElseGet(() -> BlockTolerance.read(text, unit));
    }
}
