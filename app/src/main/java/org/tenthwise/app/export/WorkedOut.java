package org.tenthwise.app.export;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Decimals;
import org.tenthwise.model.record.Measured;

/** A size that was worked out, as files that programs read have it. */
final class WorkedOut {

    /** A millimetre to the nanometre sums are rounded to; an inch to the eighth place, which is finer, as a degree. */
    private static final Map<Unit, Integer> PLACES =
            Map.of(Unit.MILLIMETRE, 6, Unit.INCH, 8, Unit.DEGREE, 8, Unit.MINUTE_OF_ARC, 6, Unit.SECOND_OF_ARC, 4);

    private static final int PLACES_OF_A_SCALE = 6;

    private WorkedOut() {}

    /**
     * With no more places than a sum gives, and no fewer than are known; an angle beside lengths in decimals of a
     * degree.
     *
     * @param known places it is known to: those of what it was worked out from
     */
    static String figure(Length length, Unit unit, int known) {
        if (!length.kind().equals(unit.kind())) {
            return figure(length, Unit.of(length.kind()).get(0), known);
        }
        BigDecimal figure = length.in(unit);
        int most = Math.max(known, PLACES.getOrDefault(unit, PLACES_OF_A_SCALE));
        if (figure.scale() > most) {
            figure = figure.setScale(most, RoundingMode.HALF_UP).stripTrailingZeros();
        }
        return unit.text(figure.scale() < known ? figure.setScale(known) : figure);
    }

    /** The size a reading stands for; an angle beside lengths as it was typed, in the unit of its reading. */
    static String size(Measured measured, Unit unit) {
        Written typed = measured.reading().typed();
        return measured.value().kind().equals(unit.kind())
                ? figure(measured.value(), unit, known(measured, unit))
                : typed.unit().text(typed.figure());
    }

    /**
     * To how many places the size of a reading is known from all it was worked out from: the reading, and what is
     * written of its setting.
     */
    static int known(Measured measured, Unit unit) {
        return Stream.concat(
                        Stream.of(measured.reading().typed()),
                        measured.reading().setting().stream()
                                .flatMap(setting ->
                                        Stream.concat(setting.certified().stream(), setting.zero().stream())))
                .mapToInt(written -> Decimals.among(written, unit))
                .max()
                .orElseThrow();
    }
}
