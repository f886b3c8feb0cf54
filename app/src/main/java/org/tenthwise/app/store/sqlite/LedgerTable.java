package org.tenthwise.app.store.sqlite;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.sqlite.SQLiteErrorCode;
import org.tenthwise.app.store.Before;
import org.tenthwise.app.store.ChainCheck;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.store.EntryText;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.app.store.UnreadableEntry;
import org.tenthwise.app.store.Verification;
import org.tenthwise.model.run.Entry;

/** The one table of a store. Bodies go in and out as bytes, so that what is hashed is what is stored. */
final class LedgerTable {

    private static final String COLUMNS =
            "SELECT seq, run, kind, at, \"by\", CAST(body AS BLOB) AS body, previous, hash FROM ledger ";

    private final Connection connection;

    LedgerTable(Connection connection) {
        this.connection = connection;
    }

    /** Something done with each row. */
    private interface Row {
        void take(ResultSet row) throws SQLException;
    }

    void add(StoredEntry entry) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement(
                """
                INSERT INTO ledger (seq, run, kind, at, "by", body, previous, hash)
                VALUES (?, ?, ?, ?, ?, CAST(? AS TEXT), ?, ?)
                """)) {
            insert.setLong(1, entry.seq());
            insert.setString(2, entry.run());
            insert.setString(3, entry.kind());
            insert.setString(4, entry.at());
            insert.setString(5, entry.by());
            insert.setBytes(6, entry.body().getBytes(UTF_8));
            insert.setString(7, entry.previous());
            insert.setString(8, entry.hash());
            int rows = insert.executeUpdate();
            if (rows != 1) {
                throw new NotKept("Entry %d made %d rows".formatted(entry.seq(), rows));
            }
        }
    }

    Head head() throws SQLException {
        List<Head> last = new ArrayList<>();
        each(
                "SELECT seq, hash FROM ledger ORDER BY seq DESC LIMIT 1",
                Optional.empty(),
                row -> last.add(new Head(row.getLong("seq"), text(row, "hash"))));
        return last.isEmpty() ? Head.OF_NOTHING : last.get(0);
    }

    /** The last entry of a run tells it; the hashes of all are gone through where that one is of an earlier release. */
    RunHead runHead(String run) throws SQLException {
        List<RunHead> head = new ArrayList<>(List.of(RunHead.OF_NOTHING));
        each(COLUMNS + "WHERE run = ? ORDER BY seq DESC LIMIT 1", Optional.of(run), row -> {
            StoredEntry last = stored(row);
            Optional<Before> before = Before.in(last.body());
            head.add(
                    before.isPresent()
                            ? new RunHead(
                                            before.get().place() - 1,
                                            0,
                                            before.get().hash())
                                    .and(last)
                            : runHeadFromItsFirst(run));
        });
        return head.get(head.size() - 1);
    }

    private RunHead runHeadFromItsFirst(String run) throws SQLException {
        List<RunHead> head = new ArrayList<>(List.of(RunHead.OF_NOTHING));
        each(
                COLUMNS + "WHERE run = ? ORDER BY seq",
                Optional.of(run),
                row -> head.set(0, head.get(0).and(stored(row))));
        return head.get(0);
    }

    /** The runs in the order they were begun, {@link Entry#SHOP} too. */
    List<String> runsAndShop() throws SQLException {
        List<String> runs = new ArrayList<>();
        each(
                "SELECT run FROM ledger GROUP BY run ORDER BY min(seq)",
                Optional.empty(),
                row -> runs.add(text(row, "run")));
        return List.copyOf(runs);
    }

    /** The runs in the order they were last worked on. */
    List<String> runsByLast() throws SQLException {
        List<String> runs = new ArrayList<>();
        each(
                "SELECT run FROM ledger WHERE run <> ? AND kind <> 'taken-over' GROUP BY run ORDER BY max(seq)",
                Optional.of(Entry.SHOP),
                row -> runs.add(text(row, "run")));
        return List.copyOf(runs);
    }

    List<String> runs() throws SQLException {
        return runsAndShop().stream().filter(run -> !run.equals(Entry.SHOP)).toList();
    }

    List<Entry> entries(String run) throws SQLException {
        List<Entry> entries = new ArrayList<>();
        each(COLUMNS + "WHERE run = ? ORDER BY seq", Optional.of(run), row -> entries.add(entry(row)));
        return List.copyOf(entries);
    }

    List<StoredEntry> stored() throws SQLException {
        List<StoredEntry> stored = new ArrayList<>();
        each(COLUMNS + "ORDER BY seq", Optional.empty(), row -> stored.add(stored(row)));
        return List.copyOf(stored);
    }

    List<StoredEntry> stored(String run) throws SQLException {
        List<StoredEntry> stored = new ArrayList<>();
        each(COLUMNS + "WHERE run = ? ORDER BY seq", Optional.of(run), row -> stored.add(stored(row)));
        return List.copyOf(stored);
    }

    /** The entries behind one, in order. */
    List<StoredEntry> storedBehind(long seq) throws SQLException {
        List<StoredEntry> stored = new ArrayList<>();
        each(
                COLUMNS + "WHERE seq > CAST(? AS INTEGER) ORDER BY seq",
                Optional.of(Long.toString(seq)),
                row -> stored.add(stored(row)));
        return List.copyOf(stored);
    }

    /** @throws SQLException if the file cannot be read for a reason that is no damage */
    Verification verify() throws SQLException {
        ChainCheck check = new ChainCheck();
        try {
            each(COLUMNS + "ORDER BY seq", Optional.empty(), row -> check.next(stored(row), bytes(row)));
            if (Schema.step(connection) >= Schema.RUNS_ARE_TIED) {
                check.everyRunIsTied();
            }
            new SchemaCheck(connection).fault().ifPresent(check::broken);
            lookIntoTheFile(check);
        } catch (SQLException e) {
            if (StoreErrors.code(e) != SQLiteErrorCode.SQLITE_CORRUPT.code) {
                throw e;
            }
            long next = check.head().seq() + 1;
            check.broken(new Verification.Fault(
                    Optional.of(next), "Entry %d cannot be read: the file is damaged there.".formatted(next)));
        }
        return check.result();
    }

    /** Whether SQLite finds its own file in order: an index gone wrong would hide entries that are there. */
    private void lookIntoTheFile(ChainCheck check) throws SQLException {
        if (!Connections.answer(connection, "PRAGMA integrity_check(1)").equals("ok")) {
            check.broken(new Verification.Fault(
                    Optional.empty(), "Every entry is as it was written, but the file around them is damaged."));
        }
        if (Connections.keptWithLog(connection)) {
            check.mayLackItsLast();
        }
    }

    private void each(String select, Optional<String> given, Row work) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(select)) {
            if (given.isPresent()) {
                statement.setString(1, given.get());
            }
            try (ResultSet rows = statement.executeQuery()) {
                while (rows.next()) {
                    work.take(rows);
                }
            }
        }
    }

    private static Entry entry(ResultSet row) throws SQLException {
        try {
            return EntryText.read(row.getLong("seq"), bytes(row));
        } catch (UnreadableEntry e) {
            throw new CouldNotRead(
                    "The text of entry %d cannot be read: %s. Nothing was changed. Verify the store."
                            .formatted(row.getLong("seq"), e.getMessage()),
                    e);
        }
    }

    private static StoredEntry stored(ResultSet row) throws SQLException {
        return new StoredEntry(
                row.getLong("seq"),
                text(row, "run"),
                text(row, "kind"),
                text(row, "at"),
                text(row, "by"),
                new String(bytes(row), UTF_8),
                text(row, "previous"),
                text(row, "hash"));
    }

    /** Only a damaged file has no text where text belongs; no text is then as wrong as any other. */
    private static String text(ResultSet row, String column) throws SQLException {
        return Objects.requireNonNullElse(row.getString(column), "");
    }

    private static byte[] bytes(ResultSet row) throws SQLException {
        return Objects.requireNonNullElse(row.getBytes("body"), new byte[0]);
    }
}
