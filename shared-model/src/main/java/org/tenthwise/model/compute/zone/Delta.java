package org.tenthwise.model.compute.zone;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/**
 * What the upper deviation of a hole K to ZC is raised by, so that it makes with the next finer shaft what the basic
 * hole makes.
 *
 * <p>Δ = IT(n) − IT(n − 1).
 *
 * <p>A length of zero or more, exact.
 *
 * <p>Zero up to 3 mm. The standard prints it for grades 3 to 8; any other grade is refused.
 *
 * <p>Source: ISO 286-1:2010, Table 3, columns of Δ.
 */
public final class Delta {

    private Delta() {}

    /** Whether the standard prints one for {@code grade}. */
    public static boolean isFor(Grade grade) {
        return grade.isFrom(Grade.IT3) && grade.isAtMost(Grade.IT8);
    }

    /** @throws IllegalArgumentException if the standard gives none */
    public static Length of(Grade grade, Length nominal) {
        if (!isFor(grade)) {
            throw new Refused("model.delta.iso-gives", grade, nominal);
        }
        if (Sizes.isToThreeMillimetres(Sizes.inRange(nominal))) {
            return Length.ZERO;
        }
        return StandardTolerance.of(grade, nominal)
                .minus(StandardTolerance.of(grade.finer().orElseThrow(), nominal));
    }
}
