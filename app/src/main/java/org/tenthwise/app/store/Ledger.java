package org.tenthwise.app.store;

import java.time.OffsetDateTime;
import java.util.List;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;

/**
 * A ledger that can be added to. One process at a time holds it, and in that process one worker thread uses it; nothing
 * here guards against two.
 */
public interface Ledger extends KeptEntries {

    /**
     * Adds entries, of one run or of several, all of them or none. Returns when they are on the disk, not before.
     *
     * @return the entries in the order given, one behind the other in the ledger
     * @throws CouldNotSave if they are not on the disk; nothing was added then, and the ledger can go on being used
     */
    List<Entry> append(List<NewEntry> entries) throws CouldNotSave;

    /**
     * Takes in runs of another store, all that is new of them or nothing; an entry of the shop says so. Returns when
     * they are on the disk.
     *
     * @param by who takes them in
     * @return what came in; nothing was added where all of it was here
     * @throws NotImported if they cannot come in as they are
     * @throws CouldNotSave if they are not on the disk
     */
    Arrivals takeIn(Incoming incoming, OffsetDateTime at, String by) throws NotImported, CouldNotSave;

    /** Adds entries of one run that happened at one time, all of them or none. */
    default List<Entry> append(String run, OffsetDateTime at, String by, List<? extends Event> events)
            throws CouldNotSave {
        return append(
                events.stream().map(event -> new NewEntry(run, at, by, event)).toList());
    }

    /** Adds one entry. */
    default Entry append(String run, OffsetDateTime at, String by, Event event) throws CouldNotSave {
        return append(List.of(new NewEntry(run, at, by, event))).get(0);
    }
}
