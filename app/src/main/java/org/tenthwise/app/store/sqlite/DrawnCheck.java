package org.tenthwise.app.store.sqlite;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.history.Plans;
import org.tenthwise.app.history.RunDigest;
import org.tenthwise.app.history.RunDigests;
import org.tenthwise.app.history.RunName;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Verification.Fault;
import org.tenthwise.model.words.Message;

/**
 * Says whether the drawn tables hold what the entries come to. They are no evidence, but lists and the history are read
 * from them, so whoever changes them behind the program's back could have a part shown as what it is not.
 *
 * <p>Each run is drawn once more, in memory, and set beside its rows; whoever writes meanwhile waits for one run at
 * most. What belongs to no single run is compared where nothing was written meanwhile.
 */
final class DrawnCheck {

    private static final String NAMES = "drawn_name";
    private static final String FORM = "drawn_form";
    private static final String RUNS = "drawn_run";

    private final Connection connection;
    private final Map<String, Long> due = new HashMap<>();

    DrawnCheck(Connection connection) {
        this.connection = connection;
    }

    /** The first row that is another; absent too where the tables are of another form, for those are made anew. */
    Optional<Fault> fault() throws SQLException {
        if (!DrawnTables.areUpToDate(connection)) {
            return Optional.empty();
        }
        Head head = new LedgerTable(connection).head();
        try (Connection made = DriverManager.getConnection("jdbc:sqlite::memory:");
                Statements drawn = new Statements(made);
                Statements there = new Statements(connection)) {
            try (Statement statement = made.createStatement()) {
                statement.executeUpdate(DrawnSchema.text());
            }
            RunDigests digests = new RunDigests(new Plans());
            DigestRows rows = new DigestRows(drawn);
            AllRuns all = new AllRuns(connection);
            List<String> runs = Stream.concat(
                            new LedgerTable(connection).runsByLast().stream(),
                            new ImportedTable(connection).runs().stream())
                    .toList();
            for (String run : runs) {
                Optional<Fault> fault = alone(() -> {
                    Optional<RunDigest> digest = digests.of(all.entries(run));
                    if (digest.isPresent()) {
                        draw(digest.get(), run, rows);
                    }
                    return unlike(run, drawn, there);
                });
                if (fault.isPresent()) {
                    return fault;
                }
            }
            return alone(() -> new LedgerTable(connection).head().equals(head) ? more(drawn, there) : Optional.empty());
        }
    }

    private void draw(RunDigest digest, String run, DigestRows rows) throws SQLException {
        Optional<String> sign = RunName.of(run).origin();
        if (sign.isEmpty()) {
            rows.write(digest, Optional.empty(), false);
            return;
        }
        long behind =
                new ImportedTable(connection).station(sign.get()).orElseThrow().number() * KeptEntries.MOST_ENTRIES;
        rows.writeImported(digest.imported(run, behind), behind);
    }

    /** Something looked at as it is at one moment. */
    private interface Look {
        Optional<Fault> at() throws SQLException;
    }

    private Optional<Fault> alone(Look look) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate("BEGIN");
            try {
                return look.at();
            } finally {
                statement.executeUpdate("COMMIT");
            }
        }
    }

    /** Of a run that was just drawn; what was drawn of it is let go of. */
    private Optional<Fault> unlike(String run, Statements drawn, Statements there) throws SQLException {
        List<Long> id = drawn.all("SELECT begun FROM drawn_run", List.of(), row -> row.getLong(1));
        if (id.isEmpty()) {
            return Optional.empty();
        }
        for (String table : tables(drawn)) {
            List<String> made = rows(drawn, "SELECT * FROM " + table, List.of());
            if (!made.equals(rows(there, inStore(table), range(table, drawn, id.get(0))))) {
                return Optional.of(fault(Message.of("fault.drawn.run", run, table)));
            }
            due.merge(table, (long) made.size(), Long::sum);
            drawn.run("DELETE FROM " + table, List.of());
        }
        return Optional.empty();
    }

    /** Gauges have no index by run alone; their places are those of the entries. */
    private static String inStore(String table) {
        return switch (table) {
            case RUNS -> "SELECT * FROM drawn_run WHERE begun = ?";
            case "drawn_gauge" -> "SELECT * FROM drawn_gauge WHERE run = ? AND seq BETWEEN ? AND ?";
            default -> "SELECT * FROM " + table + " WHERE run = ?";
        };
    }

    private static List<Long> range(String table, Statements drawn, long id) throws SQLException {
        if (!table.equals("drawn_gauge")) {
            return List.of(id);
        }
        return drawn.all(
                        "SELECT coalesce(min(seq), 0), coalesce(max(seq), 0) FROM drawn_gauge",
                        List.of(),
                        row -> List.of(id, row.getLong(1), row.getLong(2)))
                .get(0);
    }

    /** Rows that belong to no run there is, and the names that are offered. */
    private Optional<Fault> more(Statements drawn, Statements there) throws SQLException {
        for (String table : tables(drawn)) {
            long rows = there.all("SELECT count(*) FROM " + table, List.of(), row -> row.getLong(1))
                    .get(0);
            if (rows != due.getOrDefault(table, 0L)) {
                return Optional.of(fault(Message.of("fault.drawn.table", table)));
            }
        }
        String names = "SELECT * FROM " + NAMES;
        return rows(drawn, names, List.of()).equals(rows(there, names, List.of()))
                ? Optional.empty()
                : Optional.of(fault(Message.of("fault.drawn.table", NAMES)));
    }

    /** Those whose every row is of one run. */
    private static List<String> tables(Statements drawn) throws SQLException {
        return drawn
                .all(
                        "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name",
                        List.of(),
                        row -> row.getString(1))
                .stream()
                .filter(table -> !table.equals(NAMES) && !table.equals(FORM))
                .toList();
    }

    private static List<String> rows(Statements of, String question, List<?> values) throws SQLException {
        return of.all(question, values, DrawnCheck::cells).stream().sorted().toList();
    }

    private static String cells(ResultSet row) throws SQLException {
        StringBuilder cells = new StringBuilder();
        for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
            cells.append(row.getString(i)).append('\0');
        }
        return cells.toString();
    }

    private static Fault fault(Message why) {
        return new Fault(Optional.empty(), why);
    }
}
