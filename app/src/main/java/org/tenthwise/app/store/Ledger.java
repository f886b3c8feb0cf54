package org.tenthwise.app.store;

import java.time.OffsetDateTime;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;

/**
 * A ledger that can be added to. One process at a time holds it, and in that process one worker thread uses it; nothing
 * here guards against two.
 */
public interface Ledger extends KeptEntries {

    /**
     * Adds an entry. Returns when it is on the disk, not before.
     *
     * @param run the run it belongs to; {@link Entry#SHOP} for what belongs to none
     * @param at  when it happened, with the offset of the place
     * @param by  who
     * @throws CouldNotSave if it is not on the disk; nothing was added then, and the ledger can go on being used
     */
    Entry append(String run, OffsetDateTime at, String by, Event event) throws CouldNotSave;
}
