package org.tenthwise.app.store.sqlite;

import java.sql.SQLException;

/** A run came in from another store, so nothing is added to it. */
final class MadeElsewhere extends SQLException {

    private static final long serialVersionUID = 1L;

    private final String run;

    MadeElsewhere(String run) {
        super(run);
        this.run = run;
    }

    String run() {
        return run;
    }
}
