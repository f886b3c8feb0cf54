package org.tenthwise.app.store.sqlite;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.tenthwise.app.store.Verification.Fault;
import org.tenthwise.model.words.Message;

/**
 * Sets the tables, indexes and triggers of a store beside those its steps make. A trigger more can swallow an entry, a
 * trigger less lets one be changed.
 */
final class SchemaCheck {

    private final Connection store;

    SchemaCheck(Connection store) {
        this.store = store;
    }

    /** All that differs, in one fault. */
    Optional<Fault> fault() throws SQLException {
        TreeMap<String, String> there = objects(store, DrawnSchema.isNot());
        TreeMap<String, String> due = due();
        List<Message> differing = new ArrayList<>();
        due.forEach((name, sql) -> {
            if (!there.containsKey(name)) {
                differing.add(Message.of("fault.object.missing", name));
            } else if (!there.get(name).equals(sql)) {
                differing.add(Message.of("fault.object.differs", name));
            }
        });
        there.keySet().stream()
                .filter(name -> !due.containsKey(name))
                .forEach(name -> differing.add(Message.of("fault.object.foreign", name)));
        return differing.stream().reduce(Message::and).map(why -> new Fault(Optional.empty(), why));
    }

    private TreeMap<String, String> due() throws SQLException {
        try (Connection made = DriverManager.getConnection("jdbc:sqlite::memory:")) {
            Schema.make(made, Schema.step(store));
            return objects(made, DrawnSchema.isNot());
        }
    }

    /**
     * What there is, by kind and name, with the text it was made by; line ends are those of whoever built the program.
     *
     * @param which of it, as a condition
     */
    static TreeMap<String, String> objects(Connection connection, String which) throws SQLException {
        TreeMap<String, String> objects = new TreeMap<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(
                        "SELECT type || ' ' || name AS what, sql FROM sqlite_schema WHERE " + which)) {
            while (rows.next()) {
                objects.put(
                        Objects.requireNonNullElse(rows.getString("what"), "").replaceAll("\\p{Cntrl}", "?"),
                        Objects.requireNonNullElse(rows.getString("sql"), "").replace("\r\n", "\n"));
            }
        }
        return objects;
    }
}
