package org.tenthwise.app.store.sqlite;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.history.RunName;
import org.tenthwise.app.store.Arrivals;
import org.tenthwise.app.store.Incoming;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.model.run.Entry;

/** Takes runs of another store in: an entry of the ledger that says so, and their own entries apart from it. */
final class TakingIn {

    private final ImportedTable table;
    private final LedgerEnd end;

    TakingIn(Connection connection, LedgerEnd end) {
        this.table = new ImportedTable(connection);
        this.end = end;
    }

    /**
     * Called within a transaction, which is to be taken back if this fails.
     *
     * @param arrivals some of which is new
     * @throws NotKept if the store holds anything else of them then
     */
    List<Entry> take(Arrivals arrivals, Incoming incoming, OffsetDateTime at, String by) throws SQLException {
        List<Entry> said = end.add(List.of(new NewEntry(Entry.SHOP, at, by, arrivals.event(incoming))));
        Optional<ImportedTable.Station> known = table.station(arrivals.origin().sign());
        ImportedTable.Station station =
                known.orElseGet(() -> new ImportedTable.Station(said.get(0).seq(), arrivals.origin()));
        if (known.isEmpty()) {
            table.add(station);
        }
        for (Arrivals.OfRun run : arrivals.coming()) {
            for (StoredEntry entry : run.added()) {
                table.add(station, entry);
            }
            List<StoredEntry> there = table.stored(RunName.of(arrivals.id(run)));
            List<StoredEntry> behind = there.subList(Math.min((int) run.had(), there.size()), there.size());
            if (!behind.equals(run.added())) {
                throw new NotKept("What came in of run %s is not what was given".formatted(run.run()));
            }
        }
        return said;
    }
}
