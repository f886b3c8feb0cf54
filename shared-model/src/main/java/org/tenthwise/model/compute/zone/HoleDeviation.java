package org.tenthwise.model.compute.zone;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/**
 * The deviation of a hole that its letter sets: the one nearer the nominal size.
 *
 * <p>A to H: EI = −es of the shaft of that letter. K, M and N to grade 8 and P to ZC to grade 7, over 3 mm: ES = −ei +
 * Δ, Δ = IT(n) − IT(n − 1), so that hole n and shaft n − 1 make the fit of the basic hole turned about. Above those
 * grades and up to 3 mm: ES = −ei. J by its own table.
 *
 * <p>Exact; the lower deviation for A to H, zero or more, and the upper one for J to ZC.
 *
 * <p>Exceptions the standard prints: N over 3 mm is zero from grade 9; M6 over 250 up to 315 is 2 µm higher; K over 3
 * mm has nothing from grade 9; N from grade 9 begins over 1 mm. Δ is printed for grades 3 to 8, so with it there is
 * nothing finer.
 *
 * <p>Source: ISO 286-1:2010, Tables 2 and 3 with their footnotes, and the rule for holes behind them.
 */
final class HoleDeviation {

    private static final SizeTable TABLE = SizeTable.read("hole-deviations");
    private static final List<String> TO_GRADE_EIGHT = List.of("k", "m", "n");
    private static final Length M6_IS_HIGHER_BY = Sizes.micrometres(BigDecimal.valueOf(2));
    private static final BigDecimal M6_OVER = BigDecimal.valueOf(250);
    private static final BigDecimal M6_UP_TO = BigDecimal.valueOf(315);

    private HoleDeviation() {}

    /**
     * @param letters capital
     * @throws IllegalArgumentException if the standard gives none, with the reason
     */
    static Length of(String letters, Grade grade, Length nominal) {
        String shaft = letters.toLowerCase(Locale.ROOT);
        if (ShaftDeviation.ABOVE_H.contains(shaft)) {
            return ShaftDeviation.ofLetters(shaft, nominal).negated();
        }
        return shaft.equals("j") ? ofJ(grade, nominal) : belowTheLine(shaft, letters + grade.number(), grade, nominal);
    }

    private static Length ofJ(Grade grade, Length nominal) {
        BigDecimal size = Sizes.inRange(nominal);
        String row = "J" + grade.number();
        if (!TABLE.has(row)) {
            throw new Refused("model.hole-deviation.tabulated-iso", row);
        }
        return Sizes.micrometres(TABLE.at(row, size).orElseThrow());
    }

    private static Length belowTheLine(String shaft, String zone, Grade grade, Length nominal) {
        Length mirrored = ShaftDeviation.ofLetters(shaft, nominal).negated();
        BigDecimal size = Sizes.inRange(nominal);
        boolean coarse = grade.isFrom(Grade.IT9);
        if (coarse && shaft.equals("n") && Sizes.isToOneMillimetre(size)) {
            throw new Refused("model.hole-deviation.iso-uses", zone, nominal);
        }
        if (Sizes.isToThreeMillimetres(size)) {
            return mirrored;
        }
        if (coarse && shaft.equals("k")) {
            throw new Refused("model.hole-deviation.tabulated-over", zone, nominal);
        }
        if (coarse && shaft.equals("n")) {
            return Length.ZERO;
        }
        if (!grade.isAtMost(TO_GRADE_EIGHT.contains(shaft) ? Grade.IT8 : Grade.IT7)) {
            return mirrored;
        }
        Length upper = mirrored.plus(Delta.of(grade, nominal));
        return isTheM6Exception(shaft, grade, size) ? upper.plus(M6_IS_HIGHER_BY) : upper;
    }

    private static boolean isTheM6Exception(String shaft, Grade grade, BigDecimal size) {
        return shaft.equals("m") && grade == Grade.IT6 && size.compareTo(M6_OVER) > 0 && size.compareTo(M6_UP_TO) <= 0;
    }
}
