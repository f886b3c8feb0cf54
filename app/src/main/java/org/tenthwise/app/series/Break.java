package org.tenthwise.app.series;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Where a series is broken: something else changed between two parts.
 *
 * @param before the point it stands before, as {@link Series#points} counts them from 0
 * @param reasons one at least
 */
public record Break(int before, Set<Reason> reasons) {

    /** What changed. */
    public enum Reason {
        /** The limits, or their unit: no sum ever runs across. */
        LIMITS,
        /** What is measured: another dimension under the same number. No sum ever runs across. */
        KIND,
        /** The name, or the words of the drawing. */
        REQUIREMENT,
        REVISION,
        PLAN_ISSUE,
        /** A note, a doubt or a set-up tells of another tool or edge. */
        TOOL,
        /** The part was measured, and then cut again: with another offset, or at the same by another depth of cut. */
        OFFSET,
        MACHINE,
        LOT,
        GAUGE,
        PERSON,
        /**
         * By the clock the parts are in another order than in the ledger, or two ledgers tell of them: which was made
         * first is not sure.
         */
        ORDER;

        private static final Set<Reason> LOOSE =
                ordered(Stream.of(values()).filter(reason -> !reason.isStop()).collect(Collectors.toSet()));

        /** The same, always in one order; none may be there. */
        public static Set<Reason> ordered(Set<Reason> reasons) {
            Set<Reason> all = EnumSet.noneOf(Reason.class);
            all.addAll(reasons);
            return Collections.unmodifiableSet(all);
        }

        /** Everything that somebody may ask to look across. */
        public static Set<Reason> loose() {
            return LOOSE;
        }

        /** Whether what lies on either side is not the same dimension to the same limits. */
        public boolean isStop() {
            return this == LIMITS || this == KIND;
        }
    }

    public Break {
        reasons = Reason.ordered(reasons);
    }

    /** Whether it still stands for whoever looks across some reasons. */
    boolean stands(Set<Reason> across) {
        return reasons.stream().anyMatch(reason -> reason.isStop() || !across.contains(reason));
    }
}
