package org.tenthwise.app.store.sqlite;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.sqlite.SQLiteErrorCode;
import org.tenthwise.app.store.ChainCheck;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.Verification;
import org.tenthwise.model.words.Message;

/** Says whether what a store holds is as it was written: its entries and its tables, and the file around them. */
final class Verifying {

    private final Connection connection;
    private final LedgerTable table;

    Verifying(Connection connection) {
        this.connection = connection;
        this.table = new LedgerTable(connection);
    }

    /** @throws SQLException if the file cannot be read for a reason that is no damage */
    Verification entries() throws SQLException {
        ChainCheck check = new ChainCheck();
        look(check, Long.MIN_VALUE);
        return check.result();
    }

    /**
     * What stands behind an entry that was found to be well before, and the tables.
     *
     * @return absent where there is no such entry
     */
    Optional<Verification> behind(Head checked) throws SQLException {
        if (!table.headAt(checked.seq()).equals(Optional.of(checked))) {
            return Optional.empty();
        }
        Map<String, RunHead> runs = new LinkedHashMap<>();
        for (String run : table.runsBehind(checked.seq())) {
            runs.put(run, table.runHead(run, checked.seq()));
        }
        ChainCheck check = new ChainCheck(checked, runs);
        look(check, checked.seq() + 1);
        return Optional.of(check.result());
    }

    private void look(ChainCheck check, long from) throws SQLException {
        try {
            Optional<SQLException> broken = new LedgerWalk(connection).from(from, check::next);
            if (broken.isPresent()) {
                throw broken.get();
            }
            if (Schema.step(connection) >= Schema.RUNS_ARE_TIED) {
                check.everyRunIsTied();
            }
            new SchemaCheck(connection).fault().ifPresent(check::broken);
            new ImportsCheck(connection)
                    .fault(from == Long.MIN_VALUE ? 0 : from - 1)
                    .ifPresent(check::broken);
        } catch (SQLException e) {
            if (StoreErrors.code(e) != SQLiteErrorCode.SQLITE_CORRUPT.code) {
                throw e;
            }
            check.cannotBeReadOn();
        }
    }

    /** Whether SQLite finds its own file in order: an index gone wrong would hide entries that are there. */
    static Optional<Verification.Fault> aroundTheEntries(Connection connection) throws SQLException {
        boolean sound;
        try {
            sound = Connections.answer(connection, "PRAGMA integrity_check(1)").equals("ok");
        } catch (SQLException e) {
            if (StoreErrors.code(e) != SQLiteErrorCode.SQLITE_CORRUPT.code) {
                throw e;
            }
            sound = false;
        }
        return sound
                ? Optional.empty()
                : Optional.of(new Verification.Fault(Optional.empty(), Message.of("fault.damaged-around")));
    }
}
