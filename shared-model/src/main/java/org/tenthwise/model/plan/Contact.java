package org.tenthwise.model.plan;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Written;

/** How a gauge touches the work, and so what its reading is of. */
public sealed interface Contact {

    /** The reading is the size. */
    Contact SQUARE = new Square();

    /** Square across, or on the floor itself. */
    record Square() implements Contact {
    }

    /**
     * Points in two grooves of a thread, opposite each other. With an odd number of starts they stand half a pitch along from
     * each other, and the reading is askew.
     *
     * @param pitch  from one groove to the next, more than nought
     * @param starts one or more
     */
    record AcrossGrooves(Written pitch, int starts) implements Contact {
    }

    /**
     * A rod on the point of a drilled hole, where the drawing means the depth of the full diameter.
     *
     * @param diameter   of the drill, more than nought
     * @param pointAngle degrees, more than nought and less than 180
     */
    record AtDrillPoint(Written diameter, BigDecimal pointAngle) implements Contact {
    }
}
