package org.tenthwise.model.run;

import java.time.OffsetDateTime;

/**
 * One thing that happened, as the ledger keeps it.
 *
 * @param seq place in the ledger, from 1, without gaps over all runs
 * @param run run it belongs to; {@link #SHOP} for what belongs to no run
 * @param at when, with the offset of the place where it happened
 * @param by who
 */
public record Entry(long seq, String run, OffsetDateTime at, String by, Event event) {

    /** Stands in for a run where something concerns the shop: a gauge made known. */
    public static final String SHOP = "shop";
}
