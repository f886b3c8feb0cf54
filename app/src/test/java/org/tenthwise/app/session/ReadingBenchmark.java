package org.tenthwise.app.session;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.sqlite.SQLiteConfig;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.model.plan.Plan;

/**
 * How long a typed reading takes, to the disk and to what is shown next, beside a bare insert into a SQLite file with
 * the same durability; in a run of 20 steps and in one of 300, both read half-way before. They take turns, ten at a
 * time, so that a busy disk is busy for all.
 *
 * <p>After {@code mvn -q package -DskipTests}, from the top of the repository, with a folder on the disk to be tried:
 *
 * <pre>
 * java -cp app/target/tenthwise.jar:app/target/test-classes org.tenthwise.app.session.ReadingBenchmark FOLDER 1000
 * </pre>
 */
final class ReadingBenchmark {

    private static final int TURN = 10;
    private static final int WARMING_UP = 200;

    private ReadingBenchmark() {}

    /** Something that is done again and again. */
    private interface Deed {
        void once() throws Exception;

        /** What must be done before the next, untimed. */
        default void makeReady() throws Exception {}
    }

    private record Timed(String name, Deed deed, List<Long> nanoseconds) {

        Timed(String name, Deed deed) {
            this(name, deed, new ArrayList<>());
        }

        void turn() throws Exception {
            for (int i = 0; i < TURN; i++) {
                long start = System.nanoTime();
                deed.once();
                nanoseconds.add(System.nanoTime() - start);
                deed.makeReady();
            }
        }

        /** In milliseconds; so many hundredths took no longer. */
        double at(int hundredths) {
            List<Long> sorted = new ArrayList<>(nanoseconds);
            Collections.sort(sorted);
            return sorted.get(sorted.size() * hundredths / 100) / 1e6;
        }

        void tell(Timed beside) {
            System.out.printf(
                    "%-28s median %7.3f ms, ratio %.2f; 99th percentile %7.3f ms, ratio %.2f%n",
                    name, at(50), at(50) / beside.at(50), at(99), at(99) / beside.at(99));
        }
    }

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory(Path.of(arguments[0]), "reading");
        int readings = Integer.parseInt(arguments[1]);
        try (Connection bare = bare(folder.resolve("bare.db"));
                PreparedStatement insert = bare.prepareStatement("INSERT INTO entry (body, hash) VALUES (?, ?)");
                Ledger few = new SqliteStores().open(folder.resolve("few.db"));
                Ledger many = new SqliteStores().open(folder.resolve("many.db"))) {
            Timed inserted = new Timed("bare insert", () -> insert(insert));
            Timed ofFew = new Timed("reading, run of 20 steps", new Reader(few, 20));
            Timed ofMany = new Timed("reading, run of 300 steps", new Reader(many, 300));
            List<Timed> all = List.of(inserted, ofFew, ofMany);
            for (int taken = 0; taken < WARMING_UP + readings; taken += TURN) {
                if (taken == WARMING_UP) {
                    all.forEach(timed -> timed.nanoseconds().clear());
                }
                for (Timed timed : all) {
                    timed.turn();
                }
            }
            all.forEach(timed -> timed.tell(inserted));
            System.out.printf("run of 300 steps against 20: median, ratio %.2f%n", ofMany.at(50) / ofFew.at(50));
        }
    }

    private static Connection bare(Path file) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.TRUNCATE);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        Connection connection = config.createConnection("jdbc:sqlite:" + file);
        try (PreparedStatement table = connection.prepareStatement(
                "CREATE TABLE entry (seq INTEGER PRIMARY KEY, body BLOB NOT NULL, hash TEXT NOT NULL)")) {
            table.execute();
        }
        return connection;
    }

    /** As many bytes as an entry with a reading has. */
    private static void insert(PreparedStatement insert) throws SQLException {
        insert.setBytes(1, new byte[420]);
        insert.setString(2, "0".repeat(64));
        insert.executeUpdate();
    }

    /** Reads one place after the other, from half-way through a run; at its end begins another, which is not timed. */
    private static final class Reader implements Deed {

        private static final int PLACES = 8;

        private final Runs runs;
        private final Plan plan;
        private final int steps;
        private RunSession session;
        private int serial;

        Reader(Ledger ledger, int steps) throws Exception {
            this.runs = new Runs(ledger, Clock.systemUTC());
            this.steps = steps;
            this.plan = InventedPlans.inMillimetres(
                    IntStream.rangeClosed(1, steps).mapToObj(Reader::step).collect(Collectors.joining()));
            begin();
        }

        private static String step(int number) {
            String places = IntStream.rangeClosed(1, PLACES)
                    .mapToObj(place -> "\"place %d\"".formatted(place))
                    .collect(Collectors.joining(", "));
            return """
                    [[step]]
                    number = %d
                    operation = 10
                    kind = "diameter"
                    name = "Seat"
                    method = "Micrometer."
                    lower = 34.990
                    upper = 35.010
                    places = [%s]
                    gauge_kind = "micrometer"
                    gauge = "MC-1"

                    """
                    .formatted(number, places);
        }

        private void begin() throws Exception {
            session = runs.begin(new RunHeader(plan, String.valueOf(++serial), "L-1", "Lathe 4", "Setter 1"));
            while (session.state().inHand().number() <= steps / 2) {
                once();
                makeReady();
            }
        }

        @Override
        public void once() throws Exception {
            if (session.enter("35.001").objection().isPresent()) {
                throw new IllegalStateException(
                        "A reading was not taken: " + session.state().asked());
            }
        }

        @Override
        public void makeReady() throws Exception {
            if (session.asked() instanceof Prompt.Nothing) {
                if (session.state().next().isPresent()) {
                    session.goOn();
                } else {
                    begin();
                }
            }
        }
    }
}
