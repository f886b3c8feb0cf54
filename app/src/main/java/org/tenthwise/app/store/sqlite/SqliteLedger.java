package org.tenthwise.app.store.sqlite;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.Plans;
import org.tenthwise.app.store.Arrivals;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.ImportCheck;
import org.tenthwise.app.store.Incoming;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.app.store.NotImported;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.app.store.Verification;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.ImportEvent;

/** A ledger in a SQLite file. Used from one worker thread; one process at a time can have it open. */
final class SqliteLedger implements Ledger {

    private final StoreErrors trouble;
    private final StoreLock lock;
    private final Connection connection;
    private final LedgerTable table;
    private final LedgerEnd end;
    private final AllRuns runs;
    private final ImportedTable imported;
    private final DrawnTables drawn;
    private final History history;

    /**
     * @param lock held already
     * @param connection to write with
     */
    SqliteLedger(StoreFile file, StoreLock lock, Connection connection) {
        this.trouble = new StoreErrors(file);
        this.lock = lock;
        this.connection = connection;
        this.table = new LedgerTable(connection);
        this.end = new LedgerEnd(table);
        this.runs = new AllRuns(connection);
        this.imported = new ImportedTable(connection);
        Plans plans = new Plans();
        this.drawn = new DrawnTables(connection, plans);
        this.history = new SqliteHistory(this::asked, plans);
    }

    @Override
    public List<Entry> append(List<NewEntry> entries) throws CouldNotSave {
        if (entries.isEmpty()) {
            return List.of();
        }
        try {
            return Transaction.in(connection, () -> drawn.draw(end.add(entries)));
        } catch (SQLException e) {
            throw trouble.saving(e);
        }
    }

    @Override
    public Arrivals takeIn(Incoming incoming, OffsetDateTime at, String by) throws NotImported, CouldNotSave {
        Arrivals arrivals = ImportCheck.of(this, incoming);
        if (!arrivals.addAnything()) {
            return arrivals;
        }
        try {
            return Transaction.in(connection, () -> {
                drawn.draw(new TakingIn(connection, end).take(arrivals, incoming, at, by));
                drawn.drawImported(arrivals.coming().stream().map(arrivals::id).toList());
                return arrivals;
            });
        } catch (SQLException e) {
            throw trouble.saving(e);
        }
    }

    @Override
    public List<Entry> entries(String run) {
        return answer(() -> runs.entries(run));
    }

    @Override
    public List<String> runs() {
        return answer(runs::names);
    }

    @Override
    public List<ImportEvent.Provenance> origins() {
        return answer(() ->
                imported.stations().stream().map(ImportedTable.Station::origin).toList());
    }

    @Override
    public Optional<StoredEntry> importedAt(String sign, long seq) {
        return answer(() -> imported.at(sign, seq));
    }

    @Override
    public History history() {
        return history;
    }

    @Override
    public Head head() {
        return answer(table::head);
    }

    @Override
    public Optional<Head> headAt(long seq) {
        return answer(() -> table.headAt(seq));
    }

    @Override
    public RunHead runHead(String run) {
        return answer(() -> runs.head(run));
    }

    @Override
    public boolean isSealed() {
        return answer(table::isSealed);
    }

    @Override
    public List<StoredEntry> stored() {
        return answer(table::stored);
    }

    @Override
    public List<StoredEntry> stored(String run) {
        return answer(() -> runs.stored(run));
    }

    @Override
    public Verification verify() {
        Verification kept =
                asked(connection -> new Verifying(connection).entries().and(Verifying.aroundTheEntries(connection)));
        return kept.whole() ? kept.and(asked(connection -> new DrawnCheck(connection).fault())) : kept;
    }

    @Override
    public void close() {
        try (lock;
                connection) {
            if (!connection.isClosed()) {
                drawn.close();
                Connections.leaveNothingBeside(connection);
            }
        } catch (SQLException | IOException e) {
            throw trouble.reading(e);
        }
    }

    private <T> T asked(Query<T> question) {
        return answer(() -> question.of(connection));
    }

    /** Something asked of the table. */
    private interface Asked<T> {
        T answer() throws SQLException;
    }

    private <T> T answer(Asked<T> asked) {
        try {
            return asked.answer();
        } catch (SQLException e) {
            throw trouble.reading(e);
        }
    }
}
