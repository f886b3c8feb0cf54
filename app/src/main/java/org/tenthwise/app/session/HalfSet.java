package org.tenthwise.app.session;

import java.util.Optional;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.quantity.Written;

/**
 * What was typed of a gauge that is not set yet.
 *
 * @param senseToo whether its sense is asked although the shop knows it
 * @param told its sense as told now, not confirmed yet
 * @param certified size of its master
 * @param zero what it reads on that
 */
record HalfSet(boolean senseToo, Optional<ReadingDirection> told, Optional<Written> certified, Optional<Written> zero) {

    static final HalfSet NOTHING = new HalfSet(false, Optional.empty(), Optional.empty(), Optional.empty());
    static final HalfSet SENSE_TOO = new HalfSet(true, Optional.empty(), Optional.empty(), Optional.empty());

    HalfSet told(ReadingDirection sense) {
        return new HalfSet(senseToo, Optional.of(sense), certified, zero);
    }

    HalfSet on(Written size) {
        return new HalfSet(senseToo, told, Optional.of(size), zero);
    }

    HalfSet reading(Written typed) {
        return new HalfSet(senseToo, told, certified, Optional.of(typed));
    }
}
