package org.tenthwise.app.export;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** A size that was worked out, as files that programs read have it. */
final class WorkedOut {

    /** A millimetre to the nanometre sums are rounded to; an inch to the eighth place, which is finer. */
    private static final int PLACES_OF_MM = 6;

    private static final int PLACES_OF_IN = 8;

    private WorkedOut() {}

    /**
     * With no more places than a sum gives, and no fewer than are known.
     *
     * @param known places it is known to: those of what it was worked out from
     */
    static BigDecimal figure(Length length, Unit unit, int known) {
        BigDecimal figure = length.in(unit);
        int most = Math.max(known, unit == Unit.MILLIMETRE ? PLACES_OF_MM : PLACES_OF_IN);
        if (figure.scale() > most) {
            figure = figure.setScale(most, RoundingMode.HALF_UP).stripTrailingZeros();
        }
        return figure.scale() < known ? figure.setScale(known) : figure;
    }
}
