package org.tenthwise.model.plan;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Word;

/** How a gauge touches the work, and so what its reading is of. */
public sealed interface Contact {

    /** The reading is the size. */
    Contact SQUARE = new Square();

    /** Square across, or on the floor itself. */
    record Square() implements Contact {}

    /**
     * The grooves of a thread. Points in two of them, opposite each other, stand half a pitch along from each other
     * where the number of starts is odd, and the reading is askew.
     *
     * @param pitch from one groove to the next, more than zero
     * @param starts one or more
     */
    record InGrooves(Length pitch, int starts) implements Contact {

        /** Whether opposite grooves lie askew, so that it matters how the gauge touches. */
        public boolean standsAskew() {
            return starts % 2 == 1;
        }
    }

    /**
     * A drilled hole, of which the drawing means the depth of the full diameter.
     *
     * @param diameter of the drill, more than zero
     * @param pointAngle degrees, more than zero and less than 180
     * @param readTo where the rod stands
     */
    record DrilledHole(Written diameter, BigDecimal pointAngle, ReadTo readTo) implements Contact {}

    /**
     * The groove of a thread, from the crest down to the root. It is cut by a tool that has the form of the thread: fed
     * in radially, that takes twice as much off the pitch diameter as the groove gets deeper. Not for one that cuts the
     * root alone.
     *
     * @param wiresStep number of the earlier step that measures the pitch diameter over wires
     */
    record DepthOfThread(int wiresStep) implements Contact {}

    /** How deep into a drilled hole a rod goes. */
    enum ReadTo {
        /** A thin rod, on the point the drill left. */
        POINT,
        /** A rod or pin as wide as the hole. */
        FULL_DIAMETER;

        /** How plan files name it. */
        public String key() {
            return Word.of(this);
        }
    }
}
