package org.tenthwise.app.store.sqlite;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteConfig;

/** How connections to a store are made. */
final class Connections {

    /** How long to wait where another connection holds a lock for a moment. */
    private static final int PATIENCE_MILLISECONDS = 5_000;

    /** What {@code PRAGMA synchronous} answers for FULL. */
    private static final String FULL = "2";

    private Connections() {
    }

    /** A connection whose entries are on the disk when they are committed, if {@link #keepsSafely}. */
    static Connection toWrite(String url) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
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

    /** Whether what is asked of a connection to write was granted; where the place cannot, SQLite says nothing. */
    static boolean keepsSafely(Connection connection) throws SQLException {
        return answer(connection, "PRAGMA journal_mode").equals("wal")
                && answer(connection, "PRAGMA synchronous").equals(FULL);
    }

    /** The one value a statement answers with. */
    static String answer(Connection connection, String statement) throws SQLException {
        try (Statement asked = connection.createStatement(); ResultSet row = asked.executeQuery(statement)) {
            row.next();
            return row.getString(1);
        }
    }
}
