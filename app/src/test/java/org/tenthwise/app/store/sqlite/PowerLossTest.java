package org.tenthwise.app.store.sqlite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Verification;
import org.tenthwise.model.run.StepEvent;

/**
 * Lets the power go after everything a process did to the store's folder, one after the other, and looks on what is
 * left of the disk for every reading that was said to be saved: where only what was synchronised is left, and where
 * some of the rest is.
 */
class PowerLossTest {

    private static final int READINGS = 10;

    @TempDir
    private Path room;

    private final long seed = new Random().nextLong();
    private final Random random = new Random(seed);

    @BeforeEach
    void needsALibraryMadeHere() {
        assumeTrue(WatchedDisk.possible(), "A disk is watched on Linux with a C compiler (cc) alone");
    }

    @Test
    void whatWasSaidToBeSavedIsOnTheDiskWhenThePowerGoes() throws Exception {
        List<String> lost = losses(acts("full"), 1);

        assertEquals(List.of(), lost, "from seed " + seed);
    }

    /** Were nothing synchronised this test would have to notice; it does. */
    @Test
    void aStoreThatSynchronisesNothingLosesReadings() throws Exception {
        List<String> lost = losses(acts("off", "OFF"), 5);

        assertTrue(lost.size() >= READINGS, () -> "only " + lost);
    }

    private List<WatchedDisk.Act> acts(String name, String... how) throws Exception {
        List<String> arguments =
                new ArrayList<>(List.of(folder(name).resolve("store.db").toString(), Integer.toString(READINGS)));
        arguments.addAll(List.of(how));
        return WatchedDisk.of(
                WatchedDisk.library(room),
                folder(name),
                room.resolve(name + ".log"),
                ReadingsUntilPowerLoss.class,
                arguments.toArray(String[]::new));
    }

    private Path folder(String name) throws IOException {
        return Files.createDirectories(room.resolve(name)).toRealPath();
    }

    /** @param stride 1 to let the power go after every act, 5 after every fifth */
    private List<String> losses(List<WatchedDisk.Act> acts, int stride) throws IOException {
        DiskWithoutPower disk = new DiskWithoutPower(Path.of(acts.get(0).path()).getParent());
        List<String> lost = new ArrayList<>();
        int cuts = 0;
        for (int i = 0; i < acts.size(); i++) {
            disk.then(acts.get(i));
            if ("WTSUR".indexOf(acts.get(i).what()) >= 0) {
                if (cuts++ % stride == 0) {
                    loss(disk, () -> false, "nothing else is left after act " + i)
                            .ifPresent(lost::add);
                    loss(disk, random::nextBoolean, "half of the rest is left after act " + i)
                            .ifPresent(lost::add);
                }
            }
        }
        TreeMap<Long, String> said = said(disk);
        assertEquals(READINGS, said.size());
        System.out.printf(
                "power gone %d times over %d readings, from seed %d: %d losses%n",
                2 * (cuts + stride - 1) / stride, said.size(), seed, lost.size());
        return lost;
    }

    private Optional<String> loss(DiskWithoutPower disk, BooleanSupplier coin, String when) throws IOException {
        Path folder = Files.createTempDirectory(room, "left");
        try {
            disk.leave(folder, coin);
            return missing(folder.resolve("store.db"), said(disk)).map(what -> what + ", where " + when);
        } finally {
            try (Stream<Path> files = Files.list(folder)) {
                for (Path file : files.toList()) {
                    Files.delete(file);
                }
            }
            Files.delete(folder);
        }
    }

    private static Optional<String> missing(Path store, TreeMap<Long, String> said) {
        if (said.isEmpty() && !Files.exists(store)) {
            return Optional.empty(); // gone before anything was said to be saved
        }
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            Verification found = kept.verify();
            if (!found.whole()) {
                return Optional.of(found.fault().orElseThrow().why().toString());
            }
            TreeMap<Long, String> there = new TreeMap<>();
            kept.entries("run-1").forEach(entry -> {
                if (entry.event() instanceof StepEvent.ReadingTaken taken) {
                    there.put(entry.seq(), taken.typed().text());
                }
            });
            return there.entrySet().containsAll(said.entrySet())
                    ? Optional.empty()
                    : Optional.of("of %s said to be saved there is %s".formatted(said, there));
        } catch (CouldNotOpen | RuntimeException e) {
            return Optional.of(e.getMessage());
        }
    }

    private static TreeMap<Long, String> said(DiskWithoutPower disk) {
        TreeMap<Long, String> said = new TreeMap<>();
        disk.written(ReadingsUntilPowerLoss.SAID)
                .lines()
                .forEach(line -> said.put(
                        Long.parseLong(line.substring(0, line.indexOf(' '))), line.substring(line.indexOf(' ') + 1)));
        return said;
    }
}
