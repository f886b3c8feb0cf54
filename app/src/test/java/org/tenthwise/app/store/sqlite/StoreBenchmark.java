package org.tenthwise.app.store.sqlite;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.KeptEntries;

/**
 * How opening a store and verifying it grow with what is in it. Opening, behind the last head that was found to be
 * well, is set against that of a store of 1,000 entries; verifying, with everything that belongs to it, against reading
 * the texts and SHA-256 alone. The two of each take turns; medians are given.
 *
 * <p>After {@code mvn -q package -DskipTests}, from the top of the repository:
 *
 * <pre>
 * java -cp app/target/tenthwise.jar:app/target/test-classes
 *     org.tenthwise.app.store.sqlite.StoreBenchmark FOLDER 1000000
 * </pre>
 */
final class StoreBenchmark {

    private static final int SMALL = 1_000;
    private static final int OPENINGS = 41;
    private static final int VERIFICATIONS = 5;

    /** Something that takes time. */
    private interface Work {
        void done() throws Exception;
    }

    private StoreBenchmark() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory(Path.of(arguments[0]), "store");
        Path small = folder.resolve("small.db");
        Path big = folder.resolve("big.db");
        Head smallHead = BigStore.make(small, SMALL);
        Head bigHead = BigStore.make(big, Integer.parseInt(arguments[1]));
        System.out.printf("%d entries, %d MB%n", bigHead.seq(), Files.size(big) >> 20);
        compare(
                "opening",
                OPENINGS,
                () -> open(big, bigHead),
                "the same of 1000 entries",
                () -> open(small, smallHead));
        compare("verify", VERIFICATIONS, () -> verify(big), "reading and SHA-256 alone", () -> readAndHash(big));
    }

    private static void compare(String name, int times, Work work, String otherName, Work other) throws Exception {
        List<Long> first = new ArrayList<>();
        List<Long> second = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            first.add(time(work));
            second.add(time(other));
        }
        System.out.printf(
                "%s %.1f ms, %s %.1f ms, ratio %.2f%n",
                name, median(first), otherName, median(second), median(first) / median(second));
    }

    private static void open(Path store, Head checked) throws Exception {
        new SqliteStores().open(store, checked).close();
    }

    private static void verify(Path store) throws Exception {
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            if (!kept.verify().whole()) {
                throw new IllegalStateException("it should be whole");
            }
        }
    }

    /** Every column of every row, as text, and the hash each should have. */
    private static void readAndHash(Path store) throws Exception {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        try (Connection connection = Connections.toRead(StoreFile.of(store).urlAtRest());
                Statement statement = connection.createStatement();
                ResultSet rows =
                        statement.executeQuery("SELECT previous, hash, CAST(body AS BLOB), run, kind, at, \"by\", seq"
                                + " FROM ledger ORDER BY seq")) {
            long wrong = 0;
            while (rows.next()) {
                digest.update(rows.getString(1).getBytes(US_ASCII));
                digest.update(rows.getBytes(3));
                boolean right = HexFormat.of().formatHex(digest.digest()).equals(rows.getString(2));
                for (int column = 4; column <= 7; column++) {
                    right &= !rows.getString(column).isEmpty();
                }
                wrong += right && rows.getLong(8) > 0 ? 0 : 1;
            }
            if (wrong > 0) {
                throw new IllegalStateException(wrong + " entries are not as they were written");
            }
        }
    }

    private static long time(Work work) throws Exception {
        long start = System.nanoTime();
        work.done();
        return System.nanoTime() - start;
    }

    private static double median(List<Long> nanoseconds) {
        List<Long> sorted = new ArrayList<>(nanoseconds);
        Collections.sort(sorted);
        return sorted.get(sorted.size() / 2) / 1e6;
    }
}
