package org.tenthwise.app.store.sqlite;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.store.Chain;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.app.store.Verification;
import org.tenthwise.app.store.Verification.Fault;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.words.Message;

class TamperingTest {

    private static final String[] PROTECTION = {
        "DROP TRIGGER ledger_is_never_changed",
        "DROP TRIGGER ledger_is_never_shortened",
        "DROP TRIGGER ledger_is_added_to_at_the_end"
    };
    private static final int PAGE = 4096;

    @TempDir
    private Path folder;

    private Path store;
    private List<StoredEntry> stored;

    @BeforeEach
    void takeSomeReadings() throws CouldNotOpen, CouldNotSave {
        store = folder.resolve("store.db");
        try (Ledger ledger = new SqliteStores().open(store)) {
            Sample.begin(ledger, "run-1");
            for (int i = 2; i <= 5; i++) {
                Sample.read(ledger, "run-1", "35.01" + i);
            }
            // longer than a page of the file
            ledger.append(
                    "run-2",
                    Sample.AT,
                    "B. Fitter",
                    new Event.Begun(
                            new PartId("WB-118", "A"),
                            "1",
                            "2",
                            "3",
                            new PlanSource("# nothing to see\n".repeat(1000), "cd".repeat(32))));
            stored = ledger.stored();
        }
    }

    @Test
    void whatNobodyTouchedIsWhole() throws CouldNotOpen {
        assertEquals(new Verification(6, new Head(6, stored.get(5).hash()), Optional.empty()), verified());
    }

    @ParameterizedTest
    @CsvSource({"1, 11", "2, 11", "4, 1", "5, 11"})
    void oneByteOfABodyChangedInTheFileNamesTheEntry(int seq, int stride) throws IOException, CouldNotOpen {
        byte[] file = Files.readAllBytes(store);
        byte[] body = stored.get(seq - 1).body().getBytes(UTF_8);
        int start =
                findLast(file, body); // a page moved within the file leaves its old text behind where nothing is read
        byte[] changes = {0x01, 0x20, (byte) 0x80, 0x7F};
        for (int i = 0; i < body.length; i += stride) {
            byte[] changed = file.clone();
            changed[start + i] ^=
                    changes[i % changes.length]; // another letter, other case, no UTF-8, a control character
            Files.write(store, changed);

            names(seq, "Entry %d is not as it was written: its text does not give its hash.".formatted(seq));
        }
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # entry, which byte of its body, what it becomes
        1, 0,      20
        1, 60,     00
        3, 5,      FF
        5, 140,    31
        6, 0,      7D
        6, 9000,   40
        6, 17000,  C3
        """)
    void oneByteOfABodyChangedThroughSqlNamesTheEntry(int seq, int place, String becomes)
            throws SQLException, CouldNotOpen {
        tamper(
                """
                UPDATE ledger SET body = CAST(substr(CAST(body AS BLOB), 1, %2$d) || x'%3$s'
                    || substr(CAST(body AS BLOB), %2$d + 2) AS TEXT) WHERE seq = %1$d"""
                        .formatted(seq, place, becomes));

        names(seq, "Entry %d is not as it was written: its text does not give its hash.".formatted(seq));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        # statement                                        | first bad | why
        UPDATE ledger SET body = upper(body) WHERE seq = 2 | 2 | Entry 2 is not as it was written: its text does not give its hash.
        UPDATE ledger SET body = '' WHERE seq = 2          | 2 | Entry 2 is not as it was written: its text does not give its hash.
        UPDATE ledger SET hash = previous WHERE seq = 4    | 4 | Entry 4 is not as it was written: its text does not give its hash.
        UPDATE ledger SET previous = hash WHERE seq = 4    | 4 | Entry 4 does not follow entry 3 as it is now.
        UPDATE ledger SET previous = 'µ' WHERE seq = 1     | 1 | Entry 1 does not start the ledger: it names an entry before it.
        UPDATE ledger SET run = 'run-3' WHERE seq = 3      | 3 | The "run" of entry 3 is not what its text says.
        UPDATE ledger SET kind = 'closed' WHERE seq = 3    | 3 | The "kind" of entry 3 is not what its text says.
        UPDATE ledger SET at = '2026-03-02T06:15:01Z' WHERE seq = 3 | 3 | The "at" of entry 3 is not what its text says.
        UPDATE ledger SET "by" = 'B. Fitter' WHERE seq = 3 | 3 | The "by" of entry 3 is not what its text says.
        DELETE FROM ledger WHERE seq = 3                   | 3 | Entry 3 is missing: entry 2 is followed by entry 4.
        DELETE FROM ledger WHERE seq < 3                   | 1 | Entry 1 is missing: the ledger starts with entry 3.
        UPDATE ledger SET seq = 0 WHERE seq = 1            | 0 | Entry 0 is where entry 1 should be.
        UPDATE ledger SET seq = 7 WHERE seq = 6            | 6 | Entry 6 is missing: entry 5 is followed by entry 7.
        """)
    void theFirstBadEntryIsNamedAndWhy(String statement, long firstBad, String why) throws SQLException, CouldNotOpen {
        tamper(statement);

        names(firstBad, why);
    }

    @Test
    void aBodyChangedTogetherWithItsHashShowsInTheEntryAfter() throws SQLException, CouldNotOpen {
        String body = stored.get(2).body().replace("35.013", "35.003");
        tamper("UPDATE ledger SET body = '%s', hash = '%s' WHERE seq = 3"
                .formatted(body, Chain.hash(stored.get(2).previous(), body.getBytes(UTF_8))));

        names(4, "Entry 4 does not follow entry 3 as it is now.");
    }

    @Test
    void anEntryPutBeforeTheFirstIsNamedWhereverItStands() throws Exception {
        Sample.behindItsBack(store, PROTECTION);
        for (long place : new long[] {0, -1, Long.MIN_VALUE}) {
            Sample.behindItsBack(
                    store,
                    ("INSERT INTO ledger SELECT %d, run, kind, at, \"by\", body, previous, hash FROM ledger "
                                    + "WHERE seq = 2")
                            .formatted(place));
            names(place, "Entry %d is where entry 1 should be.".formatted(place));
            Sample.behindItsBack(store, "DELETE FROM ledger WHERE seq = " + place);
        }
    }

    @Test
    void anIndexThatHidesAnEntryIsNoticed() throws IOException, CouldNotOpen {
        byte[] file = Files.readAllBytes(store);
        for (int page = 0; page < file.length; page += PAGE) {
            byte[] there = Arrays.copyOfRange(file, page, page + PAGE);
            boolean leafOfAnIndex = there[0] == 0x0A; // by the SQLite file format
            if (leafOfAnIndex && new String(there, ISO_8859_1).contains("run-1")) {
                file[page + find(there, "run-1".getBytes(UTF_8))] = 'q';
            }
        }
        Files.write(store, file);

        assertEquals(
                Optional.of(new Fault(Optional.empty(), Message.of("fault.damaged-around"))),
                verified().fault());
    }

    @Test
    void whateverByteOfTheFileIsChangedNothingWrongPassesForWhole() throws IOException {
        byte[] file = Files.readAllBytes(store);
        Random random = new Random(20260302);
        int noticed = 0;
        for (int i = 0; i < 500; i++) {
            byte[] changed = file.clone();
            changed[random.nextInt(file.length)] ^= (byte) (1 + random.nextInt(255));
            Files.write(store, changed);
            try (KeptEntries kept = new SqliteStores().openToRead(store)) {
                if (kept.verify().whole()) {
                    assertEquals(stored, kept.stored()); // it was a byte nothing is kept in
                } else {
                    noticed++;
                }
            } catch (CouldNotOpen | CouldNotRead e) {
                assertFalse(e.getMessage().isBlank());
                noticed++;
            }
        }
        assertTrue(noticed > 60, "Only %d changes were noticed".formatted(noticed));
    }

    private void tamper(String statement) throws SQLException {
        Sample.behindItsBack(store, PROTECTION);
        Sample.behindItsBack(store, statement);
    }

    private void names(long firstBad, String why) throws CouldNotOpen {
        Fault fault = verified().fault().orElseThrow();
        assertEquals(Optional.of(firstBad), fault.seq());
        assertEquals(why, fault.why().toString());
    }

    private Verification verified() throws CouldNotOpen {
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            return kept.verify();
        }
    }

    private static int findLast(byte[] in, byte[] what) {
        int last = find(in, what);
        for (int i = last + 1; i + what.length <= in.length; i++) {
            if (Arrays.equals(in, i, i + what.length, what, 0, what.length)) {
                last = i;
            }
        }
        return last;
    }

    private static int find(byte[] in, byte[] what) {
        for (int i = 0; i + what.length <= in.length; i++) {
            if (Arrays.equals(in, i, i + what.length, what, 0, what.length)) {
                return i;
            }
        }
        throw new AssertionError("not in the file");
    }
}
