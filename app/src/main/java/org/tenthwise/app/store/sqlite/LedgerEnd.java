package org.tenthwise.app.store.sqlite;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.model.run.Entry;

/** Where entries are added: each is tied to the one before it in the ledger and to those before it in its run. */
final class LedgerEnd {

    private final LedgerTable table;

    LedgerEnd(LedgerTable table) {
        this.table = table;
    }

    /**
     * Called within a transaction, which is to be taken back if this fails.
     *
     * @throws NotKept if the store holds anything else behind its end than exactly these entries
     */
    List<Entry> add(List<NewEntry> entries) throws SQLException {
        long end = table.head().seq();
        List<StoredEntry> given = new ArrayList<>();
        List<Entry> added = new ArrayList<>();
        for (NewEntry entry : entries) {
            StoredEntry stored = StoredEntry.behind(table.head(), table.runHead(entry.run()), entry);
            table.add(stored);
            given.add(stored);
            added.add(new Entry(stored.seq(), entry.run(), entry.at(), entry.by(), entry.event()));
        }
        if (!table.storedBehind(end).equals(given)) {
            throw new NotKept("What was added behind entry %d is not what was given".formatted(end));
        }
        return List.copyOf(added);
    }
}
