package org.tenthwise.app.store.sqlite;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/** The drawn tables of a store as they lie in its file. */
public final class DrawnRowsOfFile {

    private DrawnRowsOfFile() {}

    /** Every row of every table, in an order that does not depend on when it was written. */
    public static List<String> of(Path store) throws SQLException {
        List<String> all = new ArrayList<>();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + store);
                Statements statements = new Statements(connection)) {
            for (String table : statements.all(
                    "SELECT name FROM sqlite_schema WHERE type = 'table' AND name LIKE 'drawn%' ORDER BY name",
                    List.of(), row -> row.getString(1))) {
                List<String> rows = statements.all("SELECT * FROM " + table, List.of(), row -> {
                    StringBuilder cells = new StringBuilder(table);
                    for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
                        cells.append('|').append(row.getString(i));
                    }
                    return cells.toString();
                });
                all.addAll(rows.stream().sorted().toList());
            }
        }
        return all;
    }

    /** The first column of what is asked of a store's file. */
    static List<String> texts(Path store, String question) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + store);
                Statements statements = new Statements(connection)) {
            return statements.all(question, List.of(), row -> row.getString(1));
        }
    }

    /** Leaves them as those of another form, with a run too few. */
    public static void spoil(Path store) throws SQLException {
        Sample.behindItsBack(
                store,
                "UPDATE drawn_form SET form = 0",
                "DELETE FROM drawn_run WHERE begun = (SELECT max(begun) FROM drawn_run)");
    }
}
