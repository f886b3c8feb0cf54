package org.tenthwise.app.store.sqlite;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Statements of one connection, each prepared once. */
final class Statements implements AutoCloseable {

    private final Connection connection;
    private final Map<String, PreparedStatement> prepared = new HashMap<>();

    Statements(Connection connection) {
        this.connection = connection;
    }

    /** Something made of a row. */
    interface Made<T> {
        T of(ResultSet row) throws SQLException;
    }

    /** @param values in the order of the question marks; an empty {@code Optional} is no value */
    void run(String sql, List<?> values) throws SQLException {
        given(sql, values).executeUpdate();
    }

    <T> List<T> all(String sql, List<?> values, Made<T> made) throws SQLException {
        List<T> all = new ArrayList<>();
        each(sql, values, row -> {
            all.add(made.of(row));
            return all;
        });
        return List.copyOf(all);
    }

    /** The same, a row at a time. */
    void each(String sql, List<?> values, Made<?> made) throws SQLException {
        try (ResultSet rows = given(sql, values).executeQuery()) {
            while (rows.next()) {
                made.of(rows);
            }
        }
    }

    @Override
    public void close() throws SQLException {
        for (PreparedStatement statement : prepared.values()) {
            statement.close();
        }
        prepared.clear();
    }

    private PreparedStatement given(String sql, List<?> values) throws SQLException {
        PreparedStatement statement = prepared.get(sql);
        if (statement == null) {
            statement = connection.prepareStatement(sql);
            prepared.put(sql, statement);
        }
        for (int i = 0; i < values.size(); i++) {
            statement.setObject(i + 1, plain(values.get(i)));
        }
        return statement;
    }

    /** As SQLite takes it; no value where there is none. */
    private static Object plain(Object value) {
        if (value instanceof Optional<?> some) {
            return some.map(Statements::plain).orElse(null);
        }
        if (value instanceof Boolean is) {
            return is ? 1 : 0;
        }
        return value instanceof Number ? value : value.toString();
    }
}
