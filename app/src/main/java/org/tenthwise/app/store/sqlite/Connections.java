package org.tenthwise.app.store.sqlite;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConnection;

/** How connections to a store are made. */
final class Connections {

    /** How long to wait where another connection holds a lock for a moment. */
    private static final int PATIENCE_MILLISECONDS = 5_000;

    /** What {@code PRAGMA synchronous} answers for FULL. */
    private static final String FULL = "2";

    private Connections() {}

    /**
     * A connection whose entries are on the disk when they are committed, if {@link #keepsSafely}: all of them in the
     * one file. A store of an earlier release, which kept the last of them in a log beside, has that folded in.
     */
    static Connection toWrite(String url) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.TRUNCATE);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setBusyTimeout(PATIENCE_MILLISECONDS);
        return config.createConnection(url);
    }

    static Connection toRead(String url) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        config.setBusyTimeout(PATIENCE_MILLISECONDS);
        return config.createConnection(url);
    }

    /** A connection that takes back an entry left unfinished, as SQLite does by itself, and changes nothing else. */
    static Connection toTakeBack(String url) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(PATIENCE_MILLISECONDS);
        Connection connection = config.createConnection(url);
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate("PRAGMA query_only = 1");
        }
        return connection;
    }

    /** All that a connection sees of its store, as it is at one moment, in a database of its own in memory. */
    static Connection copyInMemory(Connection connection) throws SQLException {
        Connection copy = DriverManager.getConnection("jdbc:sqlite::memory:");
        ((SQLiteConnection) copy).deserialize("main", file(connection));
        return copy;
    }

    /** Begins to read before the file is taken as a whole, for only reading tells what stands in the way. */
    private static byte[] file(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate("BEGIN");
            try {
                answer(connection, "SELECT count(*) FROM sqlite_schema");
                return ((SQLiteConnection) connection).serialize("main");
            } finally {
                statement.executeUpdate("COMMIT");
            }
        }
    }

    /** Whether what is asked of a connection to write was granted; where the place cannot, SQLite says nothing. */
    static boolean keepsSafely(Connection connection) throws SQLException {
        return answer(connection, "PRAGMA journal_mode").equals("truncate")
                && answer(connection, "PRAGMA synchronous").equals(FULL);
    }

    /** Takes the empty journal away before the last connection closes. It does no harm where it stays. */
    static void leaveNothingBeside(Connection connection) throws SQLException {
        answer(connection, "PRAGMA journal_mode = DELETE");
    }

    /** The one value a statement answers with. */
    static String answer(Connection connection, String statement) throws SQLException {
        try (Statement asked = connection.createStatement();
                ResultSet row = asked.executeQuery(statement)) {
            row.next();
            return row.getString(1);
        }
    }
}
