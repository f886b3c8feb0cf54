package org.tenthwise.app.store.sqlite;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.tenthwise.app.store.Chain;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.StoredEntry;

/**
 * A store as the first release made it: a log beside the file, entries that do not say what came before them in their
 * run. While it is open the log is there; closing folds it into the file, as that release did.
 */
public final class StoreOfBefore implements AutoCloseable {

    private final Connection connection;
    private final LedgerTable table;

    private StoreOfBefore(Connection connection) {
        this.connection = connection;
        this.table = new LedgerTable(connection);
    }

    public static StoreOfBefore make(Path store) throws SQLException, IOException {
        Connection connection = DriverManager.getConnection("jdbc:sqlite:" + store);
        try (Statement statement = connection.createStatement();
                InputStream step = Schema.class.getResourceAsStream("1.sql")) {
            statement.executeUpdate("PRAGMA journal_mode = WAL");
            statement.executeUpdate(new String(step.readAllBytes(), UTF_8) + ";\nPRAGMA user_version = 1");
            statement.execute("PRAGMA wal_checkpoint(TRUNCATE)");
        }
        return new StoreOfBefore(connection);
    }

    public void add(String run, String figure) throws SQLException {
        add(new NewEntry(run, Sample.AT, "A. Turner", Sample.reading(figure)));
    }

    void add(NewEntry entry) throws SQLException {
        Head head = table.head();
        StoredEntry tied = StoredEntry.behind(head, RunHead.OF_NOTHING, entry);
        String body = tied.body().replaceFirst("\"before\":\\{[^}]*},", "");
        table.add(new StoredEntry(
                tied.seq(),
                tied.run(),
                tied.kind(),
                tied.at(),
                tied.by(),
                body,
                head.hash(),
                Chain.hash(head.hash(), body.getBytes(UTF_8))));
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }
}
