package org.tenthwise.app.store.sqlite;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.tenthwise.app.store.ChainCheck;
import org.tenthwise.app.store.CouldNotCopy;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.RunChain;
import org.tenthwise.app.store.Salvage;
import org.tenthwise.app.store.StoredEntry;

/**
 * Takes what still chains out of a damaged store: the entries before the first that is not as it was written go into a
 * new store as they are, and what stands behind it is told run by run.
 */
final class Salvaging {

    /** What was found of a run. */
    private static final class Found {
        private final RunChain chain = new RunChain();
        private long kept;
        private long behind;

        void keep(StoredEntry entry) {
            kept++;
            chain.next(entry);
        }

        void seeBehind(StoredEntry entry) {
            behind++;
            chain.next(entry);
        }

        Salvage.OfRun as(String run) {
            return new Salvage.OfRun(run, kept, behind, chain.fault().isEmpty() && chain.tied());
        }
    }

    private final ChainCheck check = new ChainCheck();
    private final Map<String, Found> runs = new LinkedHashMap<>();

    private Salvaging() {}

    static Salvage from(StoreFile damaged, StoreFile to) throws CouldNotOpen, CouldNotCopy {
        SqliteReading reading = SqliteReading.open(damaged);
        Salvaging salvaging = new Salvaging();
        new StoreCopy(to)
                .make(half -> reading.ask(connection -> {
                    salvaging.take(connection, half);
                    return half;
                }));
        return salvaging.result();
    }

    private void take(Connection damaged, StoreFile half) throws SQLException {
        try (Connection made = Connections.toWrite(half.urlToMake())) {
            Schema.make(made, Schema.step(damaged));
            LedgerTable table = new LedgerTable(made);
            boolean readToItsEnd = Transaction.in(
                            made, () -> new LedgerWalk(damaged).behind(Long.MIN_VALUE, entry -> take(entry, table)))
                    .isEmpty();
            if (!readToItsEnd) {
                check.cannotBeReadOn();
            }
        }
    }

    private void take(ChainCheck.Looked looked, LedgerTable to) throws SQLException {
        StoredEntry entry = looked.stored();
        check.next(looked);
        Found run = runs.computeIfAbsent(entry.run(), name -> new Found());
        if (check.head().equals(entry.asHead())) {
            to.add(entry);
            run.keep(entry);
        } else if (looked.fault().isEmpty()) {
            run.seeBehind(entry);
        }
    }

    private Salvage result() {
        return new Salvage(
                check.head(),
                check.result().fault(),
                runs.entrySet().stream()
                        .map(run -> run.getValue().as(run.getKey()))
                        .toList());
    }
}
