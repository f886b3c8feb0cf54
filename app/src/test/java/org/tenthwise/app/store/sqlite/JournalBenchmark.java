package org.tenthwise.app.store.sqlite;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.JournalMode;

/**
 * How long an entry takes by the ways a SQLite file can be kept that leave every entry on the disk. Each way has a
 * store of its own; they take turns, ten entries at a time, so that a busy disk is busy for all. The median of an entry
 * is given.
 *
 * <p>After {@code mvn -q package -DskipTests}, from the top of the repository, with a folder on the disk to be tried:
 *
 * <pre>
 * java -cp app/target/tenthwise.jar:app/target/test-classes org.tenthwise.app.store.sqlite.JournalBenchmark FOLDER 1000
 * </pre>
 */
final class JournalBenchmark {

    private static final int TURN = 10;

    private final List<Long> nanoseconds = new ArrayList<>();
    private final Way way;
    private final Connection connection;
    private final SqliteLedger ledger;

    /** @param after runs behind each entry; may be empty */
    private record Way(String name, JournalMode journal, String synchronous, String after) {}

    private JournalBenchmark(Path folder, int number, Way way) throws Exception {
        this.way = way;
        StoreFile file = StoreFile.of(folder.resolve(number + ".db"));
        new SqliteStores().open(file.path()).close();
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(way.journal);
        connection = config.createConnection(file.urlToWrite());
        try (Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA synchronous = " + way.synchronous);
        }
        ledger = new SqliteLedger(file, StoreLock.take(file.lock()).orElseThrow(), connection);
        Sample.begin(ledger, "run-1");
    }

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory(Path.of(arguments[0]), "journal");
        int entries = Integer.parseInt(arguments[1]);
        List<Way> ways = List.of(
                new Way("log beside (WAL), FULL", JournalMode.WAL, "FULL", ""),
                new Way(
                        "log beside (WAL), FULL, folded in after each entry",
                        JournalMode.WAL,
                        "FULL",
                        "PRAGMA wal_checkpoint(TRUNCATE)"),
                new Way("journal taken away (DELETE), EXTRA", JournalMode.DELETE, "EXTRA", ""),
                new Way("journal emptied (TRUNCATE), FULL", JournalMode.TRUNCATE, "FULL", ""),
                new Way("journal crossed out (PERSIST), FULL", JournalMode.PERSIST, "FULL", ""));
        List<JournalBenchmark> all = new ArrayList<>();
        for (Way way : ways) {
            all.add(new JournalBenchmark(folder, all.size(), way));
        }
        for (int taken = 0; taken < entries; taken += TURN) {
            for (JournalBenchmark one : all) {
                one.takeReadings();
            }
        }
        double least = all.get(0).median();
        for (JournalBenchmark one : all) {
            System.out.printf(
                    "%-52s %7.3f ms an entry, ratio %.2f%n", one.way.name, one.median(), one.median() / least);
            one.ledger.close();
        }
    }

    private void takeReadings() throws Exception {
        for (int i = 0; i < TURN; i++) {
            long start = System.nanoTime();
            Sample.read(ledger, "run-1", "35.010");
            foldIn();
            nanoseconds.add(System.nanoTime() - start);
        }
    }

    private void foldIn() throws SQLException {
        if (!way.after.isEmpty()) {
            try (Statement statement = connection.createStatement()) {
                statement.execute(way.after);
            }
        }
    }

    private double median() {
        Collections.sort(nanoseconds);
        return nanoseconds.get(nanoseconds.size() / 2) / 1e6;
    }
}
