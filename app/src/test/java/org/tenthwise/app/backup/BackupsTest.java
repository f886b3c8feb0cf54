package org.tenthwise.app.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.Stores;
import org.tenthwise.app.store.sqlite.Sample;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.model.words.Words;

class BackupsTest {

    private static final Instant MORNING = Instant.parse("2026-11-30T07:15:00Z");

    private final Stores stores = new SqliteStores();

    @TempDir
    private Path folder;

    private Instant now = MORNING;
    private Path stick;
    private BackupBook book;
    private Backups backups;
    private Ledger ledger;
    private Runnable meanwhile = () -> {};

    @BeforeEach
    void openAStore() throws Exception {
        stick = Files.createDirectory(folder.resolve("stick"));
        book = new BackupBook(folder.resolve("own").resolve(BackupBook.FILE));
        InstantSource time = () -> now;
        backups = new Backups(
                StoresWithAHitch.beforeCopying(stores, () -> meanwhile.run()),
                folder.resolve("shop.db"),
                book,
                () -> Words.ENGLISH,
                time.withZone(ZoneOffset.UTC));
        ledger = stores.open(folder.resolve("shop.db"));
    }

    @AfterEach
    void close() {
        ledger.close();
    }

    @Test
    void anEmptyStoreNeedsNone() throws Exception {
        assertEquals(Optional.empty(), backups.make().failure());
        assertEquals(List.of(), files(backups.beside()));
        assertEquals("No complete backup yet.", firstSaid(backups));
    }

    private static String firstSaid(Backups of) {
        return new BackupWords(Words.ENGLISH, ZoneOffset.UTC).say(of).get(0);
    }

    /** One user may work on several stores. */
    @Test
    void aBackupOfAnotherStoreIsNoneOfThisOne() throws Exception {
        Sample.note(ledger, "run-1");
        assertTrue(backups.make().made().isPresent());
        Instant later = MORNING.plusSeconds(60);
        Backups other = new Backups(
                stores, folder.resolve("other.db"), book, () -> Words.ENGLISH, Clock.fixed(later, ZoneOffset.UTC));
        try (Ledger begun = stores.open(folder.resolve("other.db"))) {
            Sample.note(begun, "run-2");
            assertEquals("No complete backup yet.", firstSaid(other));
            assertTrue(other.isDue());
            other.make();
            assertEquals(1, files(other.beside()).size());
        }
        assertEquals(Optional.of(MORNING), backups.state().made());
        assertEquals(Optional.of(later), other.state().made());
    }

    @Test
    void oneLiesBesideTheStoreAndOneInTheFolderThatIsNamed() throws Exception {
        book.settings(new BackupSettings(Optional.of(stick), 3));
        Sample.note(ledger, "run-1");

        BackupState state = backups.make();

        assertEquals(new BackupState(Optional.of(MORNING), Optional.empty()), state);
        String name =
                "shop-20261130-071500-1-%s.db".formatted(ledger.head().hash().substring(0, 16));
        assertEquals(List.of(name), files(backups.beside()));
        assertEquals(List.of(name), files(stick));
        assertEquals(ledger.head(), head(stick.resolve(name)));
    }

    @Test
    void whatIsBackedUpAlreadyIsNotBackedUpTwice() throws Exception {
        Sample.note(ledger, "run-1");
        backups.make();
        now = MORNING.plus(Duration.ofDays(2));
        assertTrue(backups.isDue());
        assertEquals(Optional.of(now), backups.make().made());
        assertEquals(1, files(backups.beside()).size());
        assertFalse(backups.isDue());
    }

    @Test
    void soManyAsAreWantedStayAndTheOldestGo() throws Exception {
        book.settings(new BackupSettings(Optional.of(stick), 2));
        for (int i = 0; i < 4; i++) {
            Sample.note(ledger, "run-1");
            now = now.plusSeconds(60);
            backups.make();
        }
        for (Path place : List.of(backups.beside(), stick)) {
            List<String> files = files(place);
            assertEquals(2, files.size());
            assertTrue(files.get(0).startsWith("shop-20261130-071800-3-"), files.toString());
            assertTrue(files.get(1).startsWith("shop-20261130-071900-4-"), files.toString());
        }
    }

    /** Its name is all that is asked of a backup before it is taken away: it must not say less than it holds. */
    @Test
    void aBackupIsNamedByAllItHoldsThoughSomethingWasReadWhileItWasMade() throws Exception {
        book.settings(new BackupSettings(Optional.of(stick), 3));
        Sample.note(ledger, "run-1");
        meanwhile = () -> {
            meanwhile = () -> {};
            try {
                Sample.note(ledger, "run-1");
            } catch (CouldNotSave e) {
                throw new AssertionError(e);
            }
        };
        assertEquals(Optional.empty(), backups.make().failure());
        String name =
                "shop-20261130-071500-2-%s.db".formatted(ledger.head().hash().substring(0, 16));
        for (Path place : List.of(backups.beside(), stick)) {
            assertEquals(List.of(name), files(place));
            assertEquals(ledger.head(), head(place.resolve(name)));
        }
    }

    @Test
    void aClockThatIsPutBackKeepsNoBackupFromBeingDue() throws Exception {
        Sample.note(ledger, "run-1");
        now = Instant.parse("2099-01-01T00:00:00Z");
        backups.make();
        assertFalse(backups.isDue());
        now = MORNING;
        assertTrue(backups.isDue());
        backups.make();
        assertFalse(backups.isDue());
    }

    @Test
    void aBackupOfAnotherLedgerIsNeverTakenAway() throws Exception {
        book.settings(new BackupSettings(Optional.of(stick), 1));
        String others = "shop-20200101-000000-1-0123456789abcdef.db";
        Files.writeString(stick.resolve(others), "of another tablet");
        for (int i = 0; i < 3; i++) {
            Sample.note(ledger, "run-1");
            backups.make();
        }
        assertEquals(2, files(stick).size());
        assertTrue(files(stick).contains(others));
    }

    @Test
    void aStickThatIsNotThereIsToldAndTheOneBesideIsMade() throws Exception {
        book.settings(new BackupSettings(Optional.of(stick), 3));
        Sample.note(ledger, "run-1");
        backups.make();
        Files.move(stick, folder.resolve("pulled"));
        Sample.note(ledger, "run-1");
        now = MORNING.plusSeconds(60);

        BackupState state = backups.make();

        assertEquals(
                new BackupState(
                        Optional.of(MORNING),
                        Optional.of(
                                "The second copy was not made: the folder %s is not there. The backup in %s was made."
                                        .formatted(stick, backups.beside()))),
                state);
        assertTrue(Files.notExists(stick), "nothing is made in its place");
        List<String> said = new BackupWords(Words.ENGLISH, ZoneOffset.UTC).say(backups);
        assertTrue(said.get(0).startsWith("The last complete backup was made on "), said.get(0));
        assertTrue(said.get(1).startsWith("The last try was not complete. The second copy was not made"), said.get(1));
        assertEquals(2, files(backups.beside()).size());
        assertEquals(
                state, new BackupBook(folder.resolve("own").resolve(BackupBook.FILE)).state(folder.resolve("shop.db")));
        assertTrue(backups.isDue());

        Files.move(folder.resolve("pulled"), stick);
        assertEquals(Optional.empty(), backups.make().failure());
        assertEquals(2, files(stick).size());
    }

    @Test
    void olderBackupsStayWhereTheNewOneCannotBeMade() throws Exception {
        book.settings(new BackupSettings(Optional.empty(), 1));
        Sample.note(ledger, "run-1");
        backups.make();
        List<String> before = files(backups.beside());
        Sample.note(ledger, "run-1");
        Sample.note(ledger, "run-1");
        Sample.tamper(folder.resolve("shop.db"), 2);

        BackupState state = backups.make();

        assertTrue(state.failure().orElseThrow().startsWith("shop.db was not copied: it is not intact. Entry 2"));
        assertEquals(before, files(backups.beside()));
        assertEquals(1, head(backups.beside().resolve(before.get(0))).seq());
    }

    @Test
    void whatAKilledOneLeftIsTakenAwayByTheNext() throws Exception {
        Sample.note(ledger, "run-1");
        Files.createDirectories(backups.beside());
        String half = "shop-20261129-071500-1-%s.db.new"
                .formatted(ledger.head().hash().substring(0, 16));
        Files.writeString(backups.beside().resolve(half), "half");
        backups.make();
        assertEquals(1, files(backups.beside()).size());
        assertFalse(files(backups.beside()).contains(half));
    }

    @Test
    void settingsAreKeptAndWhatIsNotWishedStays() {
        new BackupWish(Optional.of(stick), Optional.empty()).keepIn(book);
        new BackupWish(Optional.empty(), Optional.of(4)).keepIn(book);
        assertEquals(new BackupSettings(Optional.of(stick), 4), book.settings());
    }

    private static Head head(Path store) throws Exception {
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            return kept.head();
        }
    }

    private static List<String> files(Path place) throws IOException {
        if (Files.notExists(place)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(place)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
