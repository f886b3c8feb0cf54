package org.tenthwise.app.store.sqlite;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.history.RunName;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.model.run.ImportEvent.Provenance;

/** The entries that came in from other stores, as those wrote them. */
final class ImportedTable {

    private static final String COLUMNS =
            "SELECT seq, run, kind, at, \"by\", CAST(body AS BLOB) AS body, previous, hash FROM imported ";

    private static final String ORIGIN = "SELECT station, sign, \"key\", store FROM imported_from ";

    private final Connection connection;

    ImportedTable(Connection connection) {
        this.connection = connection;
    }

    /** A store that runs came in from, and its number here. */
    record Station(long number, Provenance origin) {}

    /** An entry, and its text as stored, which need not be text any more. */
    interface EachEntry {
        void take(StoredEntry entry, byte[] body) throws SQLException;
    }

    /** Whether a store knows of such entries at all: one of an earlier release that is only read does not. */
    static boolean isIn(Connection connection) throws SQLException {
        return Schema.step(connection) >= Schema.RUNS_COME_IN;
    }

    void add(Station station) throws SQLException {
        run(
                """
                INSERT INTO imported_from (station, sign, "key", store) SELECT ?, ?, ?, ?
                """,
                station.number(),
                station.origin().sign(),
                station.origin().key(),
                station.origin().store());
    }

    void add(Station station, StoredEntry entry) throws SQLException {
        run(
                """
                INSERT INTO imported (station, seq, run, kind, at, "by", body, previous, hash)
                VALUES (?, ?, ?, ?, ?, ?, CAST(? AS TEXT), ?, ?)
                """,
                station.number(),
                entry.seq(),
                entry.run(),
                entry.kind(),
                entry.at(),
                entry.by(),
                entry.body().getBytes(UTF_8),
                entry.previous(),
                entry.hash());
    }

    private void run(String insert, Object... values) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(insert)) {
            for (int i = 0; i < values.length; i++) {
                statement.setObject(i + 1, values[i]);
            }
            int rows = statement.executeUpdate();
            if (rows != 1) {
                throw new NotKept("What came in made %s rows".formatted(rows));
            }
        }
    }

    /** In the order their first runs came in. */
    List<Station> stations() throws SQLException {
        return stations(ORIGIN + "ORDER BY station", List.of());
    }

    Optional<Station> station(String sign) throws SQLException {
        return stations(ORIGIN + "WHERE sign = ?", List.of(sign)).stream().findFirst();
    }

    private List<Station> stations(String sql, List<?> values) throws SQLException {
        if (!isIn(connection)) {
            return List.of();
        }
        try (Statements statements = new Statements(connection)) {
            return statements.all(
                    sql,
                    values,
                    row -> new Station(
                            row.getLong(1),
                            new Provenance(
                                    LedgerTable.text(row, 3), LedgerTable.text(row, 4), LedgerTable.text(row, 2))));
        }
    }

    /** The runs that came in, by the names they go by here, station by station in the order they were begun. */
    List<String> runs() throws SQLException {
        List<String> runs = new ArrayList<>();
        for (Station station : stations()) {
            for (String run : runs(station)) {
                runs.add(RunName.imported(run, station.origin().sign()));
            }
        }
        return List.copyOf(runs);
    }

    /** By the names their own store has for them, in the order they were begun. */
    List<String> runs(Station station) throws SQLException {
        try (Statements statements = new Statements(connection)) {
            return statements.all(
                    "SELECT run FROM imported WHERE station = ? GROUP BY run ORDER BY min(seq)",
                    List.of(station.number()),
                    row -> LedgerTable.text(row, 1));
        }
    }

    /** Each entry of a run, in order; likely, or SQLite goes through all runs of the station. */
    void each(Station station, String run, EachEntry work) throws SQLException {
        each("WHERE likely(station = ?) AND run = ? ORDER BY seq", station.number(), run, work);
    }

    List<StoredEntry> stored(RunName name) throws SQLException {
        Optional<Station> station = station(name.origin().orElseThrow());
        List<StoredEntry> stored = new ArrayList<>();
        if (station.isPresent()) {
            each(station.get(), name.run(), (entry, body) -> stored.add(entry));
        }
        return List.copyOf(stored);
    }

    Optional<StoredEntry> at(String sign, long seq) throws SQLException {
        Optional<Station> station = station(sign);
        List<StoredEntry> there = new ArrayList<>();
        if (station.isPresent()) {
            each("WHERE station = ? AND seq = ?", station.get().number(), seq, (entry, body) -> there.add(entry));
        }
        return there.stream().findFirst();
    }

    private void each(String which, long station, Object value, EachEntry work) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(COLUMNS + which)) {
            statement.setLong(1, station);
            statement.setObject(2, value);
            try (ResultSet rows = statement.executeQuery()) {
                while (rows.next()) {
                    byte[] body = LedgerTable.bytes(rows);
                    work.take(LedgerTable.stored(rows, body), body);
                }
            }
        }
    }
}
