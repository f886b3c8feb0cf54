package org.tenthwise.app.store.sqlite;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.Statement;
import java.util.List;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

/**
 * Makes a store, takes readings into it, closes it, opens it and takes more; writes the figure of each into a file
 * beside once it is said to be saved. With a third word, the way of SQLite's {@code synchronous}, the ledger is opened
 * with less care than it takes of itself.
 */
final class ReadingsUntilPowerLoss {

    static final String SAID = "said";

    private ReadingsUntilPowerLoss() {}

    public static void main(String[] arguments) throws Exception {
        Path store = Path.of(arguments[0]);
        int readings = Integer.parseInt(arguments[1]);
        try (OutputStream said = Files.newOutputStream(
                store.resolveSibling(SAID), StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
            for (int half = 0; half < 2; half++) {
                try (Ledger ledger = open(store, arguments)) {
                    for (int i = 0; i < readings / 2; i++) {
                        String figure = "%d.%03d".formatted(half, i);
                        List<Event> events = i % 5 == 0
                                ? List.of(Sample.reading(figure), new StepEvent.NoteMade(3, "x".repeat(700 * i)))
                                : List.of(Sample.reading(figure));
                        List<Entry> saved = ledger.append("run-1", Sample.AT, "A. Turner", events);
                        said.write((saved.get(0).seq() + " " + figure + "\n").getBytes(UTF_8));
                    }
                }
            }
        }
    }

    private static Ledger open(Path store, String[] arguments) throws Exception {
        if (arguments.length == 2) {
            return new SqliteStores().open(store);
        }
        new SqliteStores().open(store).close();
        StoreFile file = StoreFile.of(store);
        Connection connection = Connections.toWrite(file.urlToWrite());
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate("PRAGMA synchronous = " + arguments[2]);
        }
        return new SqliteLedger(
                file, StoreLock.take(file.lock()).orElseThrow(() -> new IOException("held")), connection);
    }
}
