package org.tenthwise.app.store.sqlite;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;

/** Something done to a store as a whole or not at all. It is on the disk when it is done. */
final class Transaction {

    /** What is done. */
    interface Work<T> {
        T done() throws SQLException;
    }

    private Transaction() {}

    static <T> T in(Connection connection, Work<T> work) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate("BEGIN IMMEDIATE");
            try {
                T done = work.done();
                statement.executeUpdate("COMMIT");
                return done;
            } catch (SQLException | RuntimeException | Error e) {
                takeBack(statement, e);
                throw e;
            }
        }
    }

    private static void takeBack(Statement statement, Throwable cause) {
        try {
            statement.executeUpdate("ROLLBACK");
        } catch (SQLException e) {
            cause.addSuppressed(e); // taken back already, as SQLite does by itself where the disk is full
        }
    }
}
