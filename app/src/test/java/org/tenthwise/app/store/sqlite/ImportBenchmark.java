package org.tenthwise.app.store.sqlite;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.StationElsewhere;

/**
 * Sets a desk into which many runs came beside one into which one came, in turns: opening, and reading a run.
 *
 * <pre>
 * java -cp app/target/tenthwise.jar:app/target/test-classes org.tenthwise.app.store.sqlite.ImportBenchmark FOLDER 1000
 * </pre>
 */
public final class ImportBenchmark {

    private static final int TURNS = 15;

    private ImportBenchmark() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory(Path.of(arguments[0]), "imports");
        int many = Integer.parseInt(arguments[1]);
        Path few = folder.resolve("one.db");
        Path all = folder.resolve("many.db");
        Head headOfFew = made(few, folder.resolve("one-station.db"), 1);
        Head headOfAll = made(all, folder.resolve("many-station.db"), many);
        List<Long> openFew = new ArrayList<>();
        List<Long> openAll = new ArrayList<>();
        List<Long> readFew = new ArrayList<>();
        List<Long> readAll = new ArrayList<>();
        for (int turn = 0; turn < TURNS; turn++) {
            openFew.add(opening(few, headOfFew, readFew));
            openAll.add(opening(all, headOfAll, readAll));
        }
        System.out.printf(
                "%d runs against 1: opening %.1f ms against %.1f ms, a ratio of %.2f; "
                        + "reading one %.1f ms against %.1f ms, %.2f%n",
                many,
                median(openAll) / 1e6,
                median(openFew) / 1e6,
                (double) median(openAll) / median(openFew),
                median(readAll) / 1e6,
                median(readFew) / 1e6,
                (double) median(readAll) / median(readFew));
    }

    private static Head made(Path desk, Path elsewhere, int runs) throws Exception {
        try (StationElsewhere station = new StationElsewhere(elsewhere, "aa11bb22");
                Ledger ledger = new SqliteStores().open(desk)) {
            String[] names = IntStream.range(0, runs).mapToObj(i -> "run-" + i).toArray(String[]::new);
            for (String name : names) {
                station.make(name);
            }
            ledger.takeIn(station.bundle(names), StationElsewhere.AT, "Inspector 1");
            return ledger.head();
        }
    }

    private static long opening(Path store, Head checked, List<Long> reading) throws Exception {
        long start = System.nanoTime();
        try (KeptEntries kept = new SqliteStores().open(store, checked)) {
            long opened = System.nanoTime();
            if (kept.entries("run-0@aa11bb22").isEmpty()) {
                throw new AssertionError("it is not there");
            }
            reading.add(System.nanoTime() - opened);
            return opened - start;
        }
    }

    private static long median(List<Long> times) {
        List<Long> sorted = new ArrayList<>(times);
        Collections.sort(sorted);
        return sorted.get(sorted.size() / 2);
    }
}
