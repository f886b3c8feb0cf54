package org.tenthwise.app.store.sqlite;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.tenthwise.app.history.RunName;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;

/** Where entries are added: each is tied to the one before it in the ledger and to those before it in its run. */
final class LedgerEnd {

    private final LedgerTable table;
    /** Runs all of whose entries are understood; what is added is. */
    private final Set<String> understood = new HashSet<>();

    LedgerEnd(LedgerTable table) {
        this.table = table;
    }

    /**
     * Called within a transaction, which is to be taken back if this fails.
     *
     * @throws MadeElsewhere if a run came in from another store: nothing is added to it here
     * @throws MadeByNewer if a run holds an entry this release does not know. What belongs to no run is added whatever
     *     stands there: nothing is concluded from all of it
     * @throws NotKept if the store holds anything else behind its end than exactly these entries
     */
    List<Entry> add(List<NewEntry> entries) throws SQLException {
        long end = table.head().seq();
        List<StoredEntry> given = new ArrayList<>();
        List<Entry> added = new ArrayList<>();
        for (NewEntry entry : entries) {
            makeSure(entry.run());
            StoredEntry stored = StoredEntry.behind(table.head(), table.runHead(entry.run()), entry);
            table.add(stored);
            given.add(stored);
            added.add(new Entry(stored.seq(), entry.run(), entry.at(), entry.by(), entry.event()));
        }
        if (!table.storedBehind(end).equals(given)) {
            throw new NotKept("What was added behind entry %s is not what was given".formatted(end));
        }
        return List.copyOf(added);
    }

    private void makeSure(String run) throws SQLException {
        if (run.equals(Entry.SHOP) || understood.contains(run)) {
            return;
        }
        if (RunName.of(run).isImported()) {
            throw new MadeElsewhere(run);
        }
        if (table.entries(run).stream()
                .anyMatch(entry -> entry.event().as(Event.Unknown.class).isPresent())) {
            throw new MadeByNewer(run);
        }
        understood.add(run);
    }
}
