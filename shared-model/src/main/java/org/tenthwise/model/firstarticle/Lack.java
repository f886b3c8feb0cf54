package org.tenthwise.model.firstarticle;

import java.util.List;

/**
 * Why a report is not complete.
 *
 * @param why what is missing
 * @param what it is missing of: characteristics by balloon or by name, runs by their id, materials by their name, or
 *     none
 */
public record Lack(Why why, List<String> what) {

    /** What can be missing. */
    public enum Why {
        /** A run is not closed. */
        RUN_OPEN(true),
        /** A signature stands against a run. */
        SIGNED_AGAINST(false),
        /** Nothing was found of a characteristic yet, or not all of it. */
        CHARACTERISTIC_OPEN(true),
        /** A characteristic is neither shown to be in nor to be out, and nobody decided about it. */
        UNPROVEN(true),
        /** A characteristic does not conform, and nobody decided what becomes of it. */
        NOT_DECIDED(true),
        /** A characteristic does not conform, and the document about it has no number. */
        NO_NUMBER(false),
        /** What does not conform asks for its corrective action, and for a partial report of what that affects. */
        NONCONFORMANCE(false),
        /** What proves a material, a process or a test is not there. */
        PRODUCT_OPEN(true),
        /** What proves a material, a process or a test says that it does not conform. */
        PRODUCT_OUT(false),
        /** Numbers missing in the row of the balloons, of which nothing is known. */
        BALLOONS_MISSING(true),
        /**
         * What an issue of the plan since the baseline, or the purpose of a run, has as affected is not in a partial
         * report.
         */
        AFFECTED_LEFT_OUT(false),
        /** Nobody named the organization. */
        NO_ORGANIZATION(false),
        /** Nobody said why there is a report. */
        NO_REASON(false),
        /** Neither the plan nor whoever asked names the route. */
        NO_ROUTE(false),
        /** The parts of an assembly are not listed here. */
        ASSEMBLY(false);

        private final boolean unaccounted;

        Why(boolean unaccounted) {
            this.unaccounted = unaccounted;
        }

        /** Whether with it nobody can sign that all is accounted for. */
        public boolean leavesUnaccounted() {
            return unaccounted;
        }
    }

    public Lack {
        what = List.copyOf(what);
    }
}
