package org.tenthwise.app.store.sqlite;

import java.sql.SQLException;

/** A store said that it took entries, and what it holds is not what it was given. */
final class NotKept extends SQLException {

    private static final long serialVersionUID = 1L;

    NotKept(String message) {
        super(message);
    }
}
