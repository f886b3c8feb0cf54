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

    /** Called within a transaction. */
    List<Entry> add(List<NewEntry> entries) throws SQLException {
        List<Entry> added = new ArrayList<>();
        for (NewEntry entry : entries) {
            StoredEntry stored = StoredEntry.behind(table.head(), table.runHead(entry.run()), entry);
            table.add(stored);
            added.add(new Entry(stored.seq(), entry.run(), entry.at(), entry.by(), entry.event()));
        }
        return List.copyOf(added);
    }
}
