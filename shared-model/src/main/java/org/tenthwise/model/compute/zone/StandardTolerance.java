package org.tenthwise.model.compute.zone;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/**
 * The width of a zone of a grade at a size.
 *
 * <p>No formula: the table of the standard, whose figures are rounded ones that no rule gives back everywhere.
 *
 * <p>A length of more than zero, exact.
 *
 * <p>A size on the edge of a step belongs to the step below. Over 500 mm, at zero and below, and for the grades from
 * IT14 at 1 mm and below, there is none.
 *
 * <p>Source: ISO 286-1:2010, Table 1.
 */
public final class StandardTolerance {

    private static final SizeTable TABLE = SizeTable.read("standard-tolerances");

    private StandardTolerance() {}

    /** @throws IllegalArgumentException if the standard gives none, with the reason */
    public static Length of(Grade grade, Length nominal) {
        BigDecimal size = Sizes.inRange(nominal);
        if (grade.isFrom(Grade.IT14) && Sizes.isToOneMillimetre(size)) {
            throw new Refused("model.standard-tolerance.grades-begin", grade.name(), nominal);
        }
        return Sizes.micrometres(TABLE.at(grade.number(), size).orElseThrow());
    }

    /** Where the step of a size begins; it is itself outside. */
    public static Length stepOver(Length nominal) {
        return new Length(TABLE.over(Sizes.inRange(nominal)));
    }

    /** Where the step of a size ends; it is itself inside. */
    public static Length stepUpTo(Length nominal) {
        return new Length(TABLE.upTo(Sizes.inRange(nominal)));
    }
}
