package org.tenthwise.app.store.sqlite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.Verification;
import org.tenthwise.model.run.StepEvent;

/**
 * Ends a process by force while it takes readings into a store, at moments chosen at random, and looks for every
 * reading that was said to be saved. Every fifth time the moment is before the first reading, so that making and
 * opening the store are hit too. Between rounds the store is only read, so that every process finds it as the one
 * before it left it.
 */
class KilledWhileTakingReadingsTest {

    private static final int ROUNDS = 25;
    private static final int ENOUGH = 8;
    private static final Duration TIME_FOR_ALL = Duration.ofSeconds(20);

    @TempDir
    private Path folder;

    @Test
    void everyReadingSaidToBeSavedIsThereAndTheChainIsWhole() throws Exception {
        long seed = new Random().nextLong();
        Random random = new Random(seed);
        Path store = folder.resolve("store.db");
        TreeMap<Long, String> said = new TreeMap<>();
        Instant start = Instant.now();
        int rounds = 0;
        while (rounds < ENOUGH
                || rounds < ROUNDS && Duration.between(start, Instant.now()).compareTo(TIME_FOR_ALL) < 0) {
            takeReadingsAndDie(store, ++rounds, random, said);
            if (Files.exists(store)) {
                try (KeptEntries kept = new SqliteStores().openToRead(store)) {
                    findAll(kept, said, "after round %d from seed %d".formatted(rounds, seed));
                }
            }
        }
        try (Ledger ledger = new SqliteStores().openExisting(store)) {
            findAll(ledger, said, "in the end, from seed " + seed);
            long next = ledger.head().seq() + 1;
            assertEquals(next, Sample.read(ledger, "run-1", "35.010").seq());
            assertTrue(ledger.verify().whole());
        }
        System.out.printf(
                "%d kills from seed %d, %d readings said to be saved, all there%n", rounds, seed, said.size());
        assertTrue(said.size() >= rounds, "too few readings to tell anything: " + said.size());
    }

    private void takeReadingsAndDie(Path store, int round, Random random, TreeMap<Long, String> said) throws Exception {
        try (AnotherProcess process = AnotherProcess.takingReadings(store, round, folder)) {
            if (round % 5 == 1) {
                Thread.sleep(random.nextInt(400));
            } else {
                note(process.line(), said);
                Thread.sleep(random.nextInt(150));
            }
            process.kill();
            for (String line : process.lastWords()) {
                note(line, said);
            }
        }
    }

    private static void note(String line, TreeMap<Long, String> said) {
        String[] words = line.split(" ");
        String before = said.put(Long.parseLong(words[0]), words[1]);
        assertEquals(null, before, "Two readings were saved as entry " + words[0]);
    }

    private static void findAll(KeptEntries kept, TreeMap<Long, String> said, String when) {
        Verification verification = kept.verify();
        assertEquals(Optional.empty(), verification.fault(), when);

        List<String> figures = new ArrayList<>();
        kept.entries("run-1")
                .forEach(entry -> figures.add(
                        ((StepEvent.ReadingTaken) entry.event()).typed().text()));
        assertEquals(figures.size(), verification.entries(), when);
        said.forEach((seq, figure) -> {
            assertTrue(seq <= figures.size(), () -> "entry %d is lost %s".formatted(seq, when));
            assertEquals(figure, figures.get((int) (seq - 1)), () -> "entry %d %s".formatted(seq, when));
        });
    }
}
