package org.tenthwise.model.record;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.position.PolarPlace;
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
    private static Expected at(PositionCheck position, Slot slot) {
        Length about = position.nominal(slot).length();
        Length room = room(position);
        return position.unit(slot).isPresent()
                ? Expected.ofADirection(about, turn(position, slot, room))
                : new Expected(about, room);
    }

    /**
     * About the one that is asked, with room for every other that is read in the same unit: which of them is typed
     * next, a hand decides.
     */
    static Expected asked(PositionCheck position, Slot slot) {
        Expected at = at(position, slot);
        Length furthest = Length.greatest(position.slots().stream()
                .map(other -> position.nominal(other).length())
                .filter(other -> other.kind().equals(at.about().kind()))
                .map(other -> other.minus(at.about()).abs())
                .toList());
        return new Expected(at.about(), furthest.plus(at.room()), at.mistaken(), at.goesRound());
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

    /** The same as an angle, at the radius of the hole. */
    private static Length turn(PositionCheck position, Slot slot, Length room) {
        return position.points().stream()
                .filter(point -> point.second().equals(slot))
                .map(PositionCheck.AxisAt::hole)
                .map(hole -> PolarPlace.at(hole.x().length(), hole.y().length()))
                .findFirst()
                .orElseThrow()
                .turnedBy(room);
    }
}
