package org.tenthwise.app.store.sqlite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.store.CouldNotCopy;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.app.store.Verification;

/** A copy that cannot be finished leaves nothing under its name, and the store as it was. */
class StoreCopyTest {

    private static final int READINGS = 3_000;

    @TempDir
    private Path folder;

    private Path store;

    /** A store of some megabytes. */
    @BeforeEach
    void fill() throws Exception {
        store = folder.resolve("store.db");
        try (Ledger ledger = new SqliteStores().open(store)) {
            Sample.begin(ledger, "run-1");
            for (int i = 0; i < READINGS / 1_000; i++) {
                ledger.append(IntStream.range(0, 1_000)
                        .mapToObj(n -> new NewEntry("run-1", Sample.AT, "A. Turner", Sample.reading("35.010")))
                        .toList());
            }
        }
    }

    @Test
    void whatWasSavedUpToTheCopyIsInItAndNothingLiesBeside() throws Exception {
        Path to = folder.resolve("copies").resolve("copy.db");
        Verification made = new SqliteStores().copy(store, to);
        assertEquals(READINGS + 1, made.entries());
        try (KeptEntries copy = new SqliteStores().openToRead(to);
                KeptEntries kept = new SqliteStores().openToRead(store)) {
            assertEquals(kept.stored(), copy.stored());
        }
        try (Stream<Path> files = Files.list(to.getParent())) {
            assertEquals(List.of(to), files.toList());
        }
    }

    @Test
    void aProcessThatIsKilledWhileCopyingLeavesNothingUnderTheName() throws Exception {
        Path to = folder.resolve("copies").resolve("copy.db");
        Path half = to.resolveSibling("copy.db.new");
        int killedHalfWay = 0;
        for (int round = 0; round < 6 && killedHalfWay < 2; round++) {
            Process copying = Copying.of(store, to, folder);
            while (copying.isAlive() && Files.notExists(half)) {
                Thread.onSpinWait();
            }
            TimeUnit.MILLISECONDS.sleep(round);
            copying.destroyForcibly().waitFor();
            if (Files.exists(half) && Files.notExists(to)) {
                killedHalfWay++;
            } else {
                Files.deleteIfExists(to);
            }
        }
        assertTrue(killedHalfWay > 0, "no copy was killed half-way");

        assertEquals(READINGS + 1, new SqliteStores().copy(store, to).entries());
        assertTrue(Files.notExists(half));
    }

    /** A real disk of one megabyte, which takes the rights to mount one. */
    @Test
    void aFullDiskIsSaidToBeFullAndKeepsNothing() throws Exception {
        assertEquals(List.of("DISK_FULL", "[]"), onASmallDisk("full"));
    }

    /** A copy can be quicker than the hand at the stick: then it was made, and is tried once more. */
    @Test
    void aStickPulledHalfWayIsSaidToBeGoneAndTheStoreIsAsItWas() throws Exception {
        List<String> said = List.of("made");
        for (int round = 0; round < 6 && said.get(0).equals("made"); round++) {
            said = onASmallDisk("pulled");
        }
        assertEquals(List.of("NOT_WRITABLE", "[]"), said);
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            assertTrue(kept.verify().whole());
        }
    }

    @Test
    void aCopyThatCannotBeReadBackIsSaidNotToBeWritten() throws Exception {
        Path to = folder.resolve("copy.db");
        StoreCopy copy = new StoreCopy(StoreFile.of(to));
        CouldNotCopy refusal = assertThrows(
                CouldNotCopy.class, () -> copy.make(half -> Files.writeString(half.path(), "another file by now")));
        assertEquals(CouldNotCopy.Reason.NOT_WRITABLE, refusal.reason());
        assertTrue(Files.notExists(to));
    }

    @Test
    void aFolderThatTakesNoFileIsSaidSo() throws Exception {
        Path file = Files.writeString(folder.resolve("file"), "");
        CouldNotCopy refusal =
                assertThrows(CouldNotCopy.class, () -> new SqliteStores().copy(store, file.resolve("copy.db")));
        assertEquals(CouldNotCopy.Reason.NOT_WRITABLE, refusal.reason());
    }

    private List<String> onASmallDisk(String how) throws Exception {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        assumeTrue(canMount(), "no disk can be mounted here");
        return Copying.said(Copying.onASmallDisk(store, disk, how, folder));
    }

    private static boolean canMount() {
        try {
            return new ProcessBuilder("unshare", "-m", "true").start().waitFor() == 0;
        } catch (IOException | InterruptedException e) {
            return false;
        }
    }
}
