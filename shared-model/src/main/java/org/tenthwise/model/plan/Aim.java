package org.tenthwise.model.plan;

import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Word;

/** The size a cut is to bring the work to. */
public sealed interface Aim {

    /** What the limits of a size give by themselves, so that it can be usual on a machine. */
    enum ByLimits implements Aim {

        /** Half-way between the limits. */
        MIDDLE,

        /**
         * A third of the tolerance in from the limit beyond which metal is left, so that an error still leaves a cut.
         */
        THIRD;

        /** How plans, the ledger and the sums name it. */
        public String key() {
            return Word.of(this);
        }

        @Override
        public Length of(Limits limits, Limit metalSide) {
            return this == MIDDLE ? limits.middle() : limits.third(metalSide);
        }
    }

    /** A size, as written in the plan. */
    record Size(Written size) implements Aim {
        @Override
        public Length of(Limits limits, Limit metalSide) {
            return size.length();
        }
    }

    /** The aim that has a word instead of a size. */
    static Optional<Aim> ofKey(String key) {
        return Word.find(ByLimits.class, key).map(aim -> aim);
    }

    /**
     * @param metalSide the limit beyond which metal is left
     * @return where one limit is missing, the middle and the third are the one there is
     */
    Length of(Limits limits, Limit metalSide);
}
