package org.tenthwise.app.store.sqlite;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sqlite.SQLiteErrorCode;
import org.tenthwise.app.history.RunName;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.app.store.Salvage;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.app.store.Verification.Fault;
import org.tenthwise.app.store.sqlite.ImportedTable.Station;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.ImportEvent;
import org.tenthwise.model.run.ImportEvent.OfRun;
import org.tenthwise.model.words.Message;

/**
 * Takes runs of other stores out of a damaged one. A run goes along where all of it is as it came in; of the others the
 * new store says that they are lost, so that it is whole without them, and their bundle brings them in again.
 */
final class SalvagingImports {

    private final List<Salvage.OfRun> runs = new ArrayList<>();
    private Optional<Fault> fault = Optional.empty();

    /** In the order their origins came in. */
    List<Salvage.OfRun> runs() {
        return List.copyOf(runs);
    }

    /** The first thing that is not as it came in. */
    Optional<Fault> fault() {
        return fault;
    }

    /** @param upTo the last entry of the ledger that went along */
    void take(Connection damaged, long upTo, Connection made) throws SQLException {
        ImportsCheck check = new ImportsCheck(damaged);
        Map<String, OfRun> due = check.due(upTo);
        ImportedTable to = new ImportedTable(made);
        Map<ImportEvent.Provenance, List<String>> lost = new LinkedHashMap<>();
        for (Station station : check.stations()) {
            to.add(station);
            for (String name : due.keySet().stream().sorted().toList()) {
                if (RunName.of(name)
                        .origin()
                        .equals(Optional.of(station.origin().sign()))) {
                    take(check, name, due.get(name), station, damaged, to).ifPresent(found -> {
                        fault = fault.or(() -> Optional.of(found));
                        lost.computeIfAbsent(station.origin(), origin -> new ArrayList<>())
                                .add(RunName.of(name).run());
                    });
                }
            }
        }
        LedgerEnd end = new LedgerEnd(new LedgerTable(made));
        OffsetDateTime now = OffsetDateTime.now();
        end.add(lost.entrySet().stream()
                .map(one -> new NewEntry(
                        Entry.SHOP, now, TakingOver.BY, new ImportEvent.Lost(one.getKey(), one.getValue())))
                .toList());
    }

    /** @return what is wrong with it; nothing of it went along then */
    private Optional<Fault> take(
            ImportsCheck check, String name, OfRun run, Station station, Connection damaged, ImportedTable to)
            throws SQLException {
        List<StoredEntry> entries = new ArrayList<>();
        Optional<Fault> found;
        try {
            found = check.fault(name);
            new ImportedTable(damaged).each(station, run.run(), (entry, body) -> entries.add(entry));
        } catch (SQLException e) {
            if (StoreErrors.code(e) != SQLiteErrorCode.SQLITE_CORRUPT.code) {
                throw e;
            }
            found = Optional.of(new Fault(Optional.empty(), Message.of("fault.imported.damaged", name)));
        }
        if (found.isEmpty()) {
            for (StoredEntry entry : entries) {
                to.add(station, entry);
            }
        }
        runs.add(new Salvage.OfRun(name, found.isEmpty() ? run.entries() : 0, 0, found.isEmpty()));
        return found;
    }
}
