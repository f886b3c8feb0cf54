package org.tenthwise.app.session;

import java.util.Optional;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.quantity.Written;

/**
 * What was typed of a gauge that is not set yet.
 *
 * @param senseToo whether its sense is asked although the shop knows it
 * @param byHand whether what it was set on before is not to be asked about again
 * @param told its sense as told now, not confirmed yet
 * @param certified size of its master
 * @param zero what it reads on that
 */
record HalfSet(
        boolean senseToo,
        boolean byHand,
        Optional<ReadingDirection> told,
        Optional<Written> certified,
        Optional<Written> zero) {

    static final HalfSet NOTHING = nothing(false, false);
    static final HalfSet BY_HAND = nothing(false, true);
    static final HalfSet SENSE_TOO = nothing(true, true);

    private static HalfSet nothing(boolean senseToo, boolean byHand) {
        return new HalfSet(senseToo, byHand, Optional.empty(), Optional.empty(), Optional.empty());
    }

    HalfSet told(ReadingDirection sense) {
        return new HalfSet(senseToo, byHand, Optional.of(sense), certified, zero);
    }

    HalfSet on(Written size) {
        return new HalfSet(senseToo, byHand, told, Optional.of(size), zero);
    }

    HalfSet reading(Written typed) {
        return new HalfSet(senseToo, byHand, told, certified, Optional.of(typed));
    }
}
