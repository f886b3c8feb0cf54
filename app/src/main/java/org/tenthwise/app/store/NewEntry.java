package org.tenthwise.app.store;

import java.time.OffsetDateTime;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;

/**
 * An entry that is to be added.
 *
 * @param run the run it belongs to; {@link Entry#SHOP} for what belongs to none
 * @param at when it happened, with the offset of the place
 * @param by who
 */
public record NewEntry(String run, OffsetDateTime at, String by, Event event) {}
