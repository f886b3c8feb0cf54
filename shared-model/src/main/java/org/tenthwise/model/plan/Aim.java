package org.tenthwise.model.plan;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.Limits;

/** The size a cut is to bring the work to. */
public sealed interface Aim {

    /** Half-way between the limits. */
    record Middle() implements Aim {
        @Override
        public Length of(Limits limits, Limit metalSide) {
            return limits.middle();
        }
    }

    /** A third of the tolerance in from the limit beyond which metal is left, so that an error still leaves a cut. */
    record Third() implements Aim {
        @Override
        public Length of(Limits limits, Limit metalSide) {
            return limits.third(metalSide);
        }
    }

    /** A size, as written in the plan. */
    record Size(Written size) implements Aim {
        @Override
        public Length of(Limits limits, Limit metalSide) {
            return size.length();
        }
    }

    /**
     * @param metalSide the limit beyond which metal is left
     * @return where one limit is missing, the middle and the third are the one there is
     */
    Length of(Limits limits, Limit metalSide);
}
