package org.tenthwise.app.store.sqlite;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.history.RunName;
import org.tenthwise.app.store.ChainCheck;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.store.RunChain;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.words.Message;

/** The runs of a store, those it made itself and those that came in, each by its name here. */
final class AllRuns {

    private final LedgerTable ledger;
    private final ImportedTable imported;

    AllRuns(Connection connection) {
        this.ledger = new LedgerTable(connection);
        this.imported = new ImportedTable(connection);
    }

    List<String> names() throws SQLException {
        return Stream.concat(ledger.runs().stream(), imported.runs().stream()).toList();
    }

    /** @throws CouldNotRead if one is not as it was written, or one before it is missing */
    List<Entry> entries(String run) throws SQLException {
        RunName name = RunName.of(run);
        return name.isImported() ? imported(name) : ledger.entries(run);
    }

    private List<Entry> imported(RunName name) throws SQLException {
        Optional<ImportedTable.Station> station = imported.station(name.origin().orElseThrow());
        List<Entry> entries = new ArrayList<>();
        if (station.isPresent()) {
            RunChain chain = new RunChain();
            imported.each(station.get(), name.run(), (stored, body) -> {
                ChainCheck.Looked looked = ChainCheck.look(stored, body);
                chain.next(looked);
                chain.fault().ifPresent(fault -> {
                    throw new CouldNotRead(Message.of("store.entry-not-as-written", fault.why()));
                });
                entries.add(looked.entry());
            });
        }
        return List.copyOf(entries);
    }

    List<StoredEntry> stored(String run) throws SQLException {
        RunName name = RunName.of(run);
        return name.isImported() ? imported.stored(name) : ledger.stored(run);
    }

    RunHead head(String run) throws SQLException {
        RunName name = RunName.of(run);
        if (!name.isImported()) {
            return ledger.runHead(run);
        }
        RunHead head = RunHead.OF_NOTHING;
        for (StoredEntry entry : imported.stored(name)) {
            head = head.and(entry);
        }
        return head;
    }
}
