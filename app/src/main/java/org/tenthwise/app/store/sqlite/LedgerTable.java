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
import java.util.function.Consumer;
import org.tenthwise.app.store.Before;
import org.tenthwise.app.store.ChainCheck;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.RunChain;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.words.Message;

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
                throw new NotKept("Entry %s made %s rows".formatted(entry.seq(), rows));
            }
        }
    }

    Head head() throws SQLException {
        List<Head> last = new ArrayList<>();
        each(
                "SELECT seq, hash FROM ledger ORDER BY seq DESC LIMIT 1",
                Optional.empty(),
                row -> last.add(new Head(row.getLong(1), text(row, 2))));
        return last.isEmpty() ? Head.OF_NOTHING : last.get(0);
    }

    RunHead runHead(String run) throws SQLException {
        return runHead(run, Long.MAX_VALUE);
    }

    /**
     * The head of a run up to an entry of the ledger. Its last entry tells it; the hashes of all are gone through where
     * that one is of an earlier release.
     */
    RunHead runHead(String run, long upTo) throws SQLException {
        String which = "WHERE run = ? AND seq <= " + upTo;
        List<RunHead> head = new ArrayList<>(List.of(RunHead.OF_NOTHING));
        each(COLUMNS + which + " ORDER BY seq DESC LIMIT 1", Optional.of(run), row -> {
            StoredEntry last = stored(row);
            Optional<Before> before = Before.in(last.body());
            head.add(
                    before.isPresent()
                            ? new RunHead(
                                            before.get().place() - 1,
                                            0,
                                            before.get().hash())
                                    .and(last)
                            : runHeadFromItsFirst(run, which));
        });
        return head.get(head.size() - 1);
    }

    private RunHead runHeadFromItsFirst(String run, String which) throws SQLException {
        List<RunHead> head = new ArrayList<>(List.of(RunHead.OF_NOTHING));
        each(
                COLUMNS + which + " ORDER BY seq",
                Optional.of(run),
                row -> head.set(0, head.get(0).and(stored(row))));
        return head.get(0);
    }

    /** The runs in the order they were begun, {@link Entry#SHOP} too. */
    List<String> runsAndShop() throws SQLException {
        List<String> runs = new ArrayList<>();
        each("SELECT run FROM ledger GROUP BY run ORDER BY min(seq)", Optional.empty(), row -> runs.add(text(row, 1)));
        return List.copyOf(runs);
    }

    /** The runs that have an entry behind one of the ledger, {@link Entry#SHOP} too. */
    List<String> runsBehind(long seq) throws SQLException {
        List<String> runs = new ArrayList<>();
        each(
                "SELECT DISTINCT run FROM ledger NOT INDEXED WHERE seq > CAST(? AS INTEGER)",
                Optional.of(Long.toString(seq)),
                row -> runs.add(text(row, 1)));
        return List.copyOf(runs);
    }

    /** The runs in the order they were last worked on. */
    List<String> runsByLast() throws SQLException {
        List<String> runs = new ArrayList<>();
        each(
                "SELECT run FROM ledger WHERE run <> ? AND kind <> 'taken-over' GROUP BY run ORDER BY max(seq)",
                Optional.of(Entry.SHOP),
                row -> runs.add(text(row, 1)));
        return List.copyOf(runs);
    }

    List<String> runs() throws SQLException {
        return runsAndShop().stream().filter(run -> !run.equals(Entry.SHOP)).toList();
    }

    /**
     * What a run is judged by, so each entry is looked at once more: on opening, perhaps only those behind it were.
     *
     * @throws CouldNotRead if one is not as it was written, or one before it is missing
     */
    List<Entry> entries(String run) throws SQLException {
        List<Entry> entries = new ArrayList<>();
        RunChain chain = new RunChain();
        each(COLUMNS + "WHERE run = ? ORDER BY seq", Optional.of(run), row -> {
            byte[] body = bytes(row);
            ChainCheck.Looked looked = ChainCheck.look(stored(row, body), body);
            chain.next(looked);
            chain.fault().ifPresent(fault -> {
                throw new CouldNotRead(Message.of("store.entry-not-as-written", fault.why()));
            });
            entries.add(looked.entry());
        });
        return List.copyOf(entries);
    }

    /** Looks from the first entry to the first seal: to the end of all where there is none. */
    boolean isSealed() throws SQLException {
        List<Long> first = new ArrayList<>();
        each(
                "SELECT seq FROM ledger WHERE kind = 'sealed' LIMIT 1",
                Optional.empty(),
                row -> first.add(row.getLong(1)));
        return !first.isEmpty();
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

    /** So many entries from a place on, in order, with their texts as stored. */
    void page(long from, int most, Consumer<LedgerWalk.StoredRow> taken) throws SQLException {
        each(
                COLUMNS + "WHERE seq >= CAST(? AS INTEGER) ORDER BY seq LIMIT " + most,
                Optional.of(Long.toString(from)),
                row -> {
                    byte[] body = bytes(row);
                    taken.accept(new LedgerWalk.StoredRow(stored(row, body), body));
                });
    }

    Optional<Head> headAt(long seq) throws SQLException {
        List<Head> heads = new ArrayList<>();
        each(
                "SELECT seq, hash FROM ledger WHERE seq = CAST(? AS INTEGER)",
                Optional.of(Long.toString(seq)),
                row -> heads.add(new Head(row.getLong(1), text(row, 2))));
        return heads.stream().findFirst();
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

    private static StoredEntry stored(ResultSet row) throws SQLException {
        return stored(row, bytes(row));
    }

    /** By the places of {@link #COLUMNS}: names take longer than what they stand for. */
    static StoredEntry stored(ResultSet row, byte[] body) throws SQLException {
        return new StoredEntry(
                row.getLong(1),
                text(row, 2),
                text(row, 3),
                text(row, 4),
                text(row, 5),
                new String(body, UTF_8),
                text(row, 7),
                text(row, 8));
    }

    /** Only a damaged file has no text where text belongs; no text is then as wrong as any other. */
    static String text(ResultSet row, int column) throws SQLException {
        return Objects.requireNonNullElse(row.getString(column), "");
    }

    static byte[] bytes(ResultSet row) throws SQLException {
        return Objects.requireNonNullElse(row.getBytes(6), new byte[0]);
    }
}
