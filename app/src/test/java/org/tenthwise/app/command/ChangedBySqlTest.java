package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.seal.SealedStores;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.Stores;
import org.tenthwise.app.store.sqlite.DrawnRowsOfFile;
import org.tenthwise.app.store.sqlite.Sample;
import org.tenthwise.app.store.sqlite.SqliteStores;

/**
 * Somebody who may write to the file of a store takes its triggers away, changes a row by SQL and puts the triggers
 * back: at a station and at a desk, {@code verify} says what is wrong first, and nothing is listed or made of the
 * store.
 */
class ChangedBySqlTest extends Walking {

    private static final String RUN = "LG-2207-C-014";

    private final Stores stores = new SealedStores(new SqliteStores());
    private Path desk;

    @BeforeEach
    void aRunAtAStationAndAtADesk() {
        desk = folder.resolve("desk.db");
        assertEquals(0, walk("LG-2207", "LG-2207-pass").exit());
        walk("WB-118", "WB-118-fail");
        Typed bundle = Typed.line("export", "--store", store, "--part", "LG-2207", "--as", "bundle", "--out", out);
        assertEquals(0, bundle.exit(), bundle::toString);
        Typed taken = Typed.line("import", bundle.out().get(0), "--store", desk, "--by", "Inspector 1");
        assertEquals(0, taken.exit(), taken::toString);
        assertEquals(0, Typed.line("verify", store).exit());
        assertEquals(0, Typed.line("verify", desk).exit());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
        UPDATE ledger SET body = upper(body) WHERE kind = 'closed' | is not as it was written: its text
        UPDATE ledger SET kind = 'note' WHERE kind = 'sealed' | is not what its text says
        DELETE FROM ledger WHERE kind = 'sealed' AND run = 'LG-2207-C-014' | is missing
        """)
    void anEntryOrASealOfAStation(String statement, String first) throws Exception {
        changed(store, statement);
        isNamed(store, first);
        assertThrows(CouldNotOpen.class, () -> stores.open(store), "the client does not open it");
        assertThrows(CouldNotOpen.class, () -> stores.makeSure(store), "the client closes it");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
        UPDATE imported SET body = upper(body) WHERE kind = 'closed' | is not as it was written: its text
        UPDATE imported SET kind = 'note' WHERE kind = 'sealed' | is not what its text says
        DELETE FROM imported WHERE kind = 'sealed' | is not as it came
        UPDATE imported_from SET "key" = store | came from is not as it was saved
        UPDATE imported_from SET sign = 'ffffffff' | came from is not as it was saved
        UPDATE ledger SET body = replace(body, '"bundle":', '"signer-known":true,"bundle":') WHERE kind = 'imported' | Entry 1 is not as it was written
        """)
    void anEntryASealOrWhereItCameFromOfADesk(String statement, String first) throws Exception {
        changed(desk, statement);
        isNamed(desk, first);
        assertThrows(CouldNotOpen.class, () -> stores.open(desk), "the client does not open it");
        assertThrows(CouldNotOpen.class, () -> stores.makeSure(desk), "the client closes it");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
        UPDATE drawn_run SET outcome = 'conforms with concessions' | run LG-2207-C-014 comes to (table drawn_run)
        UPDATE drawn_characteristic SET verdict = 'pass', distance = '0.001' | run LG-2207-C-014 comes to (table drawn_characteristic)
        UPDATE drawn_size SET size = '1' WHERE run = (SELECT min(begun) FROM drawn_run) | (table drawn_size)
        UPDATE drawn_reading SET figure = '0.001' WHERE seq = (SELECT max(seq) FROM drawn_reading) | (table drawn_reading)
        UPDATE drawn_gauge SET gauge = 'BG-9' | (table drawn_gauge)
        DELETE FROM drawn_matter | run WB-118-B-004 comes to (table drawn_matter)
        UPDATE drawn_matter SET number = 'NC-0' | run WB-118-B-004 comes to (table drawn_matter)
        DELETE FROM drawn_characteristic WHERE verdict <> 'pass' | (table drawn_characteristic)
        INSERT INTO drawn_matter SELECT 7777, place, kind, "check", about, number, "by", since FROM drawn_matter | (table drawn_matter)
        UPDATE drawn_name SET name = upper(name) | (table drawn_name)
        """)
    void whatListsAreReadFrom(String statement, String first) throws Exception {
        List<String> drawn = DrawnRowsOfFile.of(store);
        Head head;
        try (Ledger ledger = stores.open(store)) {
            head = ledger.head();
        }
        changed(store, statement);
        isNamed(store, first);

        stores.open(store, head).close();
        CouldNotOpen closed = assertThrows(CouldNotOpen.class, () -> stores.makeSure(store));
        assertTrue(closed.getMessage().contains("is not to be relied on"), closed::getMessage);
        stores.open(store).close();
        assertEquals(drawn, DrawnRowsOfFile.of(store), "opened again, it is what the entries come to");
        assertEquals(0, Typed.line("verify", store).exit());
        assertEquals(head, stores.makeSure(store));
    }

    @Test
    void whatListsAreReadFromAtADesk() throws Exception {
        List<String> drawn = DrawnRowsOfFile.of(desk);
        for (String table :
                List.of("drawn_run SET outcome", "drawn_characteristic SET verdict", "drawn_size SET size")) {
            changed(desk, "UPDATE " + table + " = 'x'");
            isNamed(desk, "(table " + table.replaceAll(" .*", "") + ")");
            stores.open(desk).close();
            assertEquals(drawn, DrawnRowsOfFile.of(desk));
        }
    }

    private static void isNamed(Path file, String first) {
        Typed verified = Typed.line("verify", file);
        assertEquals(1, verified.exit(), verified::toString);
        assertTrue(
                verified.out().get(0).contains("is not intact")
                        && verified.out().get(0).contains(first),
                verified::toString);
        for (String command : List.of("history", "matters")) {
            String trouble = Typed.line(command, "--store", file).trouble();
            assertTrue(trouble.contains(first), trouble);
        }
        assertEquals(
                2,
                Typed.line("export", "--store", file, "--run", RUN, "--as", "csv", "--out", file + ".out")
                        .exit());
    }

    /** Past all triggers, which are put back as they were. */
    private static void changed(Path file, String statement) throws SQLException {
        Map<String, String> triggers = new LinkedHashMap<>();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement asked = connection.createStatement();
                ResultSet rows = asked.executeQuery("SELECT name, sql FROM sqlite_schema WHERE type = 'trigger'")) {
            while (rows.next()) {
                triggers.put(rows.getString(1), rows.getString(2));
            }
        }
        Sample.behindItsBack(
                file,
                Stream.of(
                                triggers.keySet().stream().map(name -> "DROP TRIGGER " + name),
                                Stream.of(statement),
                                triggers.values().stream())
                        .flatMap(all -> all)
                        .toArray(String[]::new));
    }
}
