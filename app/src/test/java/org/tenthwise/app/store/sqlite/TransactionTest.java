package org.tenthwise.app.store.sqlite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TransactionTest {

    /** Also where the memory is full: what was half done would otherwise be read as saved. */
    @ParameterizedTest
    @ValueSource(classes = {SQLException.class, IllegalStateException.class, OutOfMemoryError.class})
    void whateverBreaksItOffNothingOfItStaysAndTheNextGoesOn(Class<? extends Throwable> failure) throws Exception {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite::memory:")) {
            add(connection, "CREATE TABLE kept (figure TEXT)");
            Throwable broken = failure.getDeclaredConstructor().newInstance();
            assertThrows(
                    failure,
                    () -> Transaction.in(connection, () -> {
                        add(connection, "INSERT INTO kept VALUES ('35.010')");
                        return thrown(broken);
                    }));
            assertEquals("0", Connections.answer(connection, "SELECT count(*) FROM kept"));
            Transaction.in(connection, () -> add(connection, "INSERT INTO kept VALUES ('35.020')"));
            assertEquals("35.020", Connections.answer(connection, "SELECT figure FROM kept"));
        }
    }

    @Test
    void whatIsDoneIsHandedOut() throws Exception {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite::memory:")) {
            assertEquals("35.010", Transaction.in(connection, () -> "35.010"));
        }
    }

    private static int add(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            return statement.executeUpdate(sql);
        }
    }

    @SuppressWarnings("unchecked")
    private static <E extends Throwable> int thrown(Throwable failure) throws E {
        throw (E) failure;
    }
}
