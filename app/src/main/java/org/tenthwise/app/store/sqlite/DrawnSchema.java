package org.tenthwise.app.store.sqlite;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.TreeMap;

/**
 * The tables that are drawn from the ledger, and what tells them from all others: their names, and that they are
 * nothing but tables and indexes. A trigger of such a name is none of them.
 */
final class DrawnSchema {

    private static final String FILE = "drawn.sql";

    /** What belongs to the drawn tables, as a condition on the list of what there is. */
    private static final String IS_DRAWN = "type IN ('table', 'index') AND substr(tbl_name, 1, 6) = 'drawn_'";

    private DrawnSchema() {}

    static String text() {
        return SqlText.of(FILE);
    }

    /** Whether something there is drawn, as a part of a question. */
    static String isNot() {
        return "NOT (" + IS_DRAWN + ")";
    }

    static TreeMap<String, String> due() throws SQLException {
        try (Connection made = DriverManager.getConnection("jdbc:sqlite::memory:");
                Statement statement = made.createStatement()) {
            statement.executeUpdate(text());
            return there(made);
        }
    }

    static TreeMap<String, String> there(Connection connection) throws SQLException {
        return SchemaCheck.objects(connection, IS_DRAWN);
    }

    static void throwAway(Connection connection) throws SQLException {
        List<String> tables;
        try (Statements statements = new Statements(connection)) {
            tables = statements.all(
                    "SELECT name FROM sqlite_schema WHERE type = 'table' AND substr(name, 1, 6) = 'drawn_'",
                    List.of(),
                    row -> row.getString(1));
        }
        try (Statement statement = connection.createStatement()) {
            for (String table : tables) {
                statement.executeUpdate("DROP TABLE \"" + table.replace("\"", "\"\"") + "\"");
            }
        }
    }
}
