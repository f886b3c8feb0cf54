package org.tenthwise.app.store.sqlite;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.tenthwise.app.store.ChainCheck;
import org.tenthwise.app.store.CouldNotCopy;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.RunChain;
import org.tenthwise.app.store.Salvage;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.app.store.Verification;

/**
 * Takes what still chains out of a damaged store: the entries before the first that is not as it was written go into a
 * new store as they are, and what stands behind it is told run by run.
 *
 * <p>Runs of other stores that came in go along, each whole or not at all: see {@link SalvagingImports}.
 *
 * <p>Of a store of the first release that was taken over, the entries that vouch for its runs can stand behind the
 * fault. The new store is one of that release then, and is taken over when it is opened.
 */
final class Salvaging {

    /** What was found of a run. */
    private static final class Found {
        private final RunChain chain = new RunChain();
        private long kept;
        private boolean keptAreTied;
        private long behind;

        void keep(StoredEntry entry) {
            kept++;
            chain.next(entry);
            keptAreTied = chain.tied();
        }

        void seeBehind(StoredEntry entry) {
            behind++;
            chain.next(entry);
        }

        Salvage.OfRun as(String run) {
            return new Salvage.OfRun(run, kept, behind, chain.fault().isEmpty() && chain.tied());
        }
    }

    private ChainCheck check = new ChainCheck();
    private Head head = Head.OF_NOTHING;
    private SalvagingImports imports = new SalvagingImports();
    private final Map<String, Found> runs = new LinkedHashMap<>();

    private Salvaging() {}

    static Salvage from(StoreFile damaged, StoreFile to) throws CouldNotOpen, CouldNotCopy {
        SqliteReading reading = SqliteReading.open(damaged);
        Salvaging salvaging = new Salvaging();
        Verification made = new StoreCopy(to)
                .make(half -> reading.ask(connection -> {
                    salvaging.take(connection, half);
                    return half;
                }));
        made.fault().ifPresent(fault -> {
            throw new IllegalStateException("What was taken out of a store does not chain: " + fault.why());
        });
        return salvaging.result();
    }

    /** Begins anew each time: the store is asked once more where somebody wrote to it meanwhile. */
    private void take(Connection damaged, StoreFile half) throws SQLException {
        StoreCopy.discard(half);
        check = new ChainCheck();
        imports = new SalvagingImports();
        runs.clear();
        try (Connection made = Connections.toWrite(half.urlToMake())) {
            Schema.make(made, Schema.step(damaged));
            LedgerTable table = new LedgerTable(made);
            boolean readToItsEnd = Transaction.in(
                            made, () -> new LedgerWalk(damaged).from(Long.MIN_VALUE, entry -> take(entry, table)))
                    .isEmpty();
            if (!readToItsEnd) {
                check.cannotBeReadOn();
            }
            head = Transaction.in(made, () -> {
                imports.take(damaged, check.head().seq(), made);
                return table.head();
            });
            if (runs.values().stream().anyMatch(run -> run.kept > 0 && !run.keptAreTied)) {
                Schema.beforeRunsWereTied(made);
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
                head,
                check.result().fault().or(imports::fault),
                Stream.concat(
                                runs.entrySet().stream()
                                        .map(run -> run.getValue().as(run.getKey())),
                                imports.runs().stream())
                        .toList());
    }
}
