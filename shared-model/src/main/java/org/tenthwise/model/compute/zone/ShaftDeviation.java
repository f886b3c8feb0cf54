package org.tenthwise.model.compute.zone;

import java.math.BigDecimal;
import java.util.List;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/**
 * The deviation of a shaft that its letter sets: the one nearer the nominal size.
 *
 * <p>No formula: the table of the standard. j is tabulated by grade; k is zero outside grades 4 to 7.
 *
 * <p>Exact; the upper deviation for a to h, zero or less, and the lower one for j to zc.
 *
 * <p>a and b begin over 1 mm. Where the standard leaves a letter out at a size, so does this, with the sizes it is for.
 *
 * <p>Source: ISO 286-1:2010, Tables 4 and 5.
 */
final class ShaftDeviation {

    static final List<String> ABOVE_H = List.of("a", "b", "c", "cd", "d", "e", "ef", "f", "fg", "g", "h");

    private static final SizeTable TABLE = SizeTable.read("shaft-deviations");
    private static final List<String> NOT_TO_ONE_MILLIMETRE = List.of("a", "b");

    private ShaftDeviation() {}

    static boolean knows(String letters) {
        return letters.equals("j") || letters.equals("js") || TABLE.has(letters);
    }

    /** @throws IllegalArgumentException if the standard gives none, with the reason */
    static Length of(String letters, Grade grade, Length nominal) {
        if (letters.equals("k") && !(grade.isFrom(Grade.IT4) && grade.isAtMost(Grade.IT7))) {
            Sizes.inRange(nominal);
            return Length.ZERO;
        }
        return ofRow(letters.equals("j") ? "j" + grade.number() : letters, letters, nominal);
    }

    /** What stands in the table, whatever the grade. */
    static Length ofLetters(String letters, Length nominal) {
        return ofRow(letters, letters, nominal);
    }

    private static Length ofRow(String row, String letters, Length nominal) {
        BigDecimal size = Sizes.inRange(nominal);
        if (!TABLE.has(row)) {
            throw new Refused("model.shaft-deviation.tabulated-iso", row, letters);
        }
        if (NOT_TO_ONE_MILLIMETRE.contains(letters) && Sizes.isToOneMillimetre(size)) {
            throw new Refused("model.shaft-deviation.iso-uses", letters, nominal);
        }
        return Sizes.micrometres(TABLE.at(row, size)
                .orElseThrow(() ->
                        new Refused("model.shaft-deviation.tabulated-iso-gives", row, nominal, TABLE.filled(row))));
    }
}
