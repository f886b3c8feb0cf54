package org.tenthwise.app.store.sqlite;

import java.sql.SQLException;

/** A run holds entries of kinds this release does not know, so nothing is added to it. */
final class MadeByNewer extends SQLException {

    private static final long serialVersionUID = 1L;

    private final String run;

    MadeByNewer(String run) {
        super("Run %s was made by a newer release".formatted(run));
        this.run = run;
    }

    String run() {
        return run;
    }
}
