package org.tenthwise.app.store.sqlite;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.OffsetDateTime;
import java.util.List;

/**
 * The numbered steps that make the tables of a store, each one SQL file and one transaction. A step once released stays
 * as it is; a change to the tables is a further step.
 */
final class Schema {

    /** Marks a SQLite file as a ledger: "TWLG" in ASCII. The first step writes it. */
    static final int APPLICATION = 0x54574C47;

    /** The step from which every run of a store is tied together. */
    static final int RUNS_ARE_TIED = 2;

    /** The step from which runs of other stores can come in. */
    static final int RUNS_COME_IN = 5;

    /** The newest step there is. */
    static final int NEWEST = 5;

    private Schema() {}

    static int application(Connection connection) throws SQLException {
        return Integer.parseInt(Connections.answer(connection, "PRAGMA application_id"));
    }

    /** The last step a store has taken; 0 for a file with nothing in it. */
    static int step(Connection connection) throws SQLException {
        return Integer.parseInt(Connections.answer(connection, "PRAGMA user_version"));
    }

    /** How many tables, indexes and triggers there are; found by reading what they are. */
    static int objects(Connection connection) throws SQLException {
        return Integer.parseInt(Connections.answer(connection, "SELECT count(sql) FROM sqlite_schema"));
    }

    /**
     * Takes the steps that are still to take.
     *
     * @param now when that is done, with the offset of the place
     */
    static void bringUpToDate(Connection connection, OffsetDateTime now) throws SQLException {
        for (int next = step(connection) + 1; next <= NEWEST; next++) {
            take(connection, next, now);
        }
    }

    /** Makes the tables as they are after a step, where there are none. */
    static void make(Connection connection, int step) throws SQLException {
        for (int next = 1; next <= step; next++) {
            run(connection, next);
        }
    }

    /** Leaves a store that nothing came into as one whose runs are still to be tied. */
    static void beforeRunsWereTied(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate("DROP TABLE IF EXISTS imported; DROP TABLE IF EXISTS imported_from;\n"
                    + "PRAGMA user_version = " + (RUNS_ARE_TIED - 1));
        }
    }

    private static void take(Connection connection, int step, OffsetDateTime now) throws SQLException {
        Transaction.in(connection, () -> {
            run(connection, step);
            return step == RUNS_ARE_TIED ? TakingOver.everyRun(connection, now) : List.of();
        });
        if (step(connection) != step) {
            throw new SQLException("Step %s of the store was not taken to its end".formatted(step));
        }
    }

    private static void run(Connection connection, int step) throws SQLException {
        // executeUpdate runs all statements of a text; execute would run the first and pass over the rest in silence
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate(SqlText.of(step + ".sql") + ";\nPRAGMA user_version = " + step);
        }
    }
}
