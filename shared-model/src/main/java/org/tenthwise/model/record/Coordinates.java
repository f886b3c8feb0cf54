package org.tenthwise.model.record;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.PositionCheck;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** Where the coordinates of true places are looked for, for {@link Plausible}. */
final class Coordinates {

    private static final Length LEAST_ROOM = Length.of("1", Unit.MILLIMETRE);
    private static final BigDecimal A_FEW = new BigDecimal("5");

    private Coordinates() {}

    /** About the one that a slot is read against. */
    private static Plausible.Expected at(PositionCheck position, Slot slot) {
        return new Plausible.Expected(position.nominal(slot).length(), room(position));
    }

    /**
     * About the next one, with room for every other of the check: which of them is typed next, a hand decides.
     *
     * @param read how many were read before it
     */
    static Plausible.Expected next(PositionCheck position, int read) {
        List<Length> nominal = position.slots().stream()
                .map(slot -> position.nominal(slot).length())
                .toList();
        Length about = nominal.get(Math.min(read, nominal.size() - 1));
        Length furthest = Length.greatest(
                nominal.stream().map(other -> other.minus(about).abs()).toList());
        return new Plausible.Expected(about, furthest.plus(room(position)));
    }

    /** The readings that no hole of such a drawing has: from another datum, with a wrong sign, of another hole. */
    static List<Measured> farOff(PositionCheck position, List<Measured> measured) {
        return measured.stream()
                .filter(read -> Plausible.isFarOff(position, read, Optional.of(at(position, read.slot()))))
                .toList();
    }

    private static Length room(PositionCheck position) {
        return Length.greatest(List.of(LEAST_ROOM, position.zone().length().times(A_FEW)));
    }
}
