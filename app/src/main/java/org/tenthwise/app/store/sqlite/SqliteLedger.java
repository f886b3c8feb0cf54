package org.tenthwise.app.store.sqlite;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.Plans;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.app.store.Verification;
import org.tenthwise.model.run.Entry;

/** A ledger in a SQLite file. Used from one worker thread; one process at a time can have it open. */
public final class SqliteLedger implements Ledger {

    private final StoreErrors trouble;
    private final StoreLock lock;
    private final Connection connection;
    private final LedgerTable table;
    private final LedgerEnd end;
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
        Plans plans = new Plans();
        this.drawn = new DrawnTables(connection, plans);
        this.history = new SqliteHistory(this::asked, plans);
    }

    /** Opens a store, or makes one where there is no file, with the folders that lead to it. */
    public static SqliteLedger open(Path path) throws CouldNotOpen {
        StoreFile file = file(path);
        if (file.exists()) {
            return openExisting(path);
        }
        try {
            Durable.folders(file.path().getParent());
        } catch (IOException e) {
            throw new StoreErrors(file).readOnly(e);
        }
        return Opening.of(file(path));
    }

    /**
     * Opens a store to write to, if its chain is whole: nothing is added behind an entry that was changed, or behind
     * one that is not understood. Makes none.
     */
    public static SqliteLedger openExisting(Path path) throws CouldNotOpen {
        StoreFile file = file(path);
        try (KeptEntries kept = SqliteReading.open(file)) {
            Verification found = kept.verify();
            if (found.fault().isPresent()) {
                throw new StoreErrors(file).notWhole(found.fault().get());
            }
            if (found.madeByNewer().isPresent()) {
                throw new StoreErrors(file).newer(found.madeByNewer().get());
            }
        }
        return Opening.of(file);
    }

    /** Opens a store for reading alone, also while another process writes to it; makes none and changes nothing. */
    public static KeptEntries openToRead(Path path) throws CouldNotOpen {
        return SqliteReading.open(file(path));
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
    public List<Entry> entries(String run) {
        return answer(() -> table.entries(run));
    }

    @Override
    public List<String> runs() {
        return answer(table::runs);
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
    public RunHead runHead(String run) {
        return answer(() -> table.runHead(run));
    }

    @Override
    public List<StoredEntry> stored() {
        return answer(table::stored);
    }

    @Override
    public List<StoredEntry> stored(String run) {
        return answer(() -> table.stored(run));
    }

    @Override
    public Verification verify() {
        return answer(table::verify);
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

    private <T> T asked(Question<T> question) {
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

    private static StoreFile file(Path path) throws CouldNotOpen {
        try {
            return StoreFile.of(path);
        } catch (IOException e) {
            throw new StoreErrors(new StoreFile(path.toAbsolutePath())).unreadable(e);
        }
    }
}
