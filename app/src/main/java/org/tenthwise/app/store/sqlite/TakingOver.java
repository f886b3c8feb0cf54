package org.tenthwise.app.store.sqlite;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.List;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;

/**
 * Ties the runs of a store of an earlier release together: one more entry in each, which vouches for those before it.
 */
final class TakingOver {

    static final String BY = "Tenthwise";

    private TakingOver() {}

    /** Called within a transaction. */
    static List<Entry> everyRun(Connection connection, OffsetDateTime now) throws SQLException {
        LedgerTable table = new LedgerTable(connection);
        return new LedgerEnd(table)
                .add(table.runsAndShop().stream()
                        .map(run -> new NewEntry(run, now, BY, new Event.TakenOver()))
                        .toList());
    }
}
