package org.tenthwise.app.store.sqlite;

import java.sql.Connection;
import java.sql.SQLException;

/** Something asked of an open connection. */
interface Query<T> {

    T of(Connection connection) throws SQLException;

    /** Whoever answers. */
    interface Answering {
        <T> T answer(Query<T> question);
    }
}
