package org.tenthwise.app.store.sqlite;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.app.history.RunName;
import org.tenthwise.app.store.ChainCheck;
import org.tenthwise.app.store.EntryText;
import org.tenthwise.app.store.RunChain;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.Seals;
import org.tenthwise.app.store.UnreadableEntry;
import org.tenthwise.app.store.Verification.Fault;
import org.tenthwise.app.store.sqlite.ImportedTable.Station;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.ImportEvent;
import org.tenthwise.model.run.ImportEvent.OfRun;
import org.tenthwise.model.words.Message;

/**
 * Says whether the entries that came in are those the ledger says came in. Its entries of that kind name each run with
 * its head, which every byte of the run goes into.
 */
final class ImportsCheck {

    private final Connection connection;
    private final ImportedTable table;
    /** Where runs came from, in order, each by the entry of the ledger that says so first. */
    private final Map<ImportEvent.Provenance, Station> stations = new LinkedHashMap<>();
    /** By the name it goes by here, what a run must be. */
    private final Map<String, OfRun> due = new LinkedHashMap<>();
    /** The runs that the last entries looked at name. */
    private final Set<String> touched = new LinkedHashSet<>();

    ImportsCheck(Connection connection) {
        this.connection = connection;
        this.table = new ImportedTable(connection);
    }

    /**
     * The first thing that is not as it came in.
     *
     * @param behind entries of the ledger up to this one were found to be well with all that came in with them; 0 for
     *     all there is
     */
    Optional<Fault> fault(long behind) throws SQLException {
        read(behind, Long.MAX_VALUE);
        for (String run : touched) {
            Optional<Fault> fault = fault(run);
            if (fault.isPresent()) {
                return fault;
            }
        }
        return behind > 0 ? Optional.empty() : foreign();
    }

    /** What the ledger says up to one of its entries, which are as they were written. */
    private void read(long behind, long upTo) throws SQLException {
        if (!ImportedTable.isIn(connection)) {
            return;
        }
        try (Statements statements = new Statements(connection)) {
            statements.each(
                    """
                    SELECT seq, CAST(body AS BLOB) FROM ledger
                    WHERE run = ? AND kind IN ('imported', 'import-lost') AND seq <= ? ORDER BY seq
                    """,
                    List.of(Entry.SHOP, upTo),
                    row -> {
                        read(row.getLong(1), row.getBytes(2), behind);
                        return true;
                    });
        }
    }

    private void read(long seq, byte[] body, long behind) {
        try {
            Entry entry = EntryText.read(seq, body);
            entry.event().as(ImportEvent.Imported.class).ifPresent(imported -> {
                ImportEvent.Provenance origin = imported.origin();
                stations.putIfAbsent(origin, new Station(seq, origin));
                imported.runs().forEach(run -> {
                    String name = RunName.imported(run.run(), origin.sign());
                    due.put(name, run);
                    touch(name, seq, behind);
                });
            });
            entry.event().as(ImportEvent.Lost.class).ifPresent(lost -> lost.runs()
                    .forEach(run -> {
                        String name = RunName.imported(run, lost.origin().sign());
                        due.remove(name);
                        touch(name, seq, behind);
                    }));
        } catch (UnreadableEntry e) {
            // the walk over the ledger names it
        }
    }

    private void touch(String name, long seq, long behind) {
        if (seq > behind) {
            touched.add(name);
        }
    }

    /** The runs that must be here, by their names here. */
    Map<String, OfRun> due(long upTo) throws SQLException {
        read(0, upTo);
        return Map.copyOf(due);
    }

    /** Where runs came from, as the ledger says up to the entry read last. */
    List<Station> stations() {
        return List.copyOf(stations.values());
    }

    /** What is wrong with a run that must be here, or must not. */
    Optional<Fault> fault(String name) throws SQLException {
        RunName run = RunName.of(name);
        Optional<Station> station = table.station(run.origin().orElseThrow());
        Optional<OfRun> said = Optional.ofNullable(due.get(name));
        if (station.isEmpty() || !stations.containsValue(station.get())) {
            return at(Message.of("fault.imported.origin", run.origin().orElseThrow()));
        }
        RunChain chain = new RunChain();
        Seals.Tally seals = new Seals.Tally();
        List<Fault> unsealed = new ArrayList<>();
        long[] rows = {0};
        table.each(station.get(), run.run(), (stored, body) -> {
            rows[0]++;
            if (said.isPresent() && rows[0] <= said.get().entries()) {
                RunHead before = chain.head();
                chain.next(ChainCheck.look(stored, body));
                if (chain.fault().isEmpty()) {
                    seals.next(stored, before).ifPresent(unsealed::add);
                }
            }
        });
        if (chain.fault().isPresent()) {
            return at(Message.of("fault.imported.run", name, chain.fault().get().why()));
        }
        if (!unsealed.isEmpty()) {
            return at(Message.of("fault.imported.run", name, unsealed.get(0).why()));
        }
        RunHead due =
                said.map(of -> new RunHead(of.entries(), of.last(), of.hash())).orElse(RunHead.OF_NOTHING);
        return rows[0] == due.place() && chain.head().equals(due)
                ? Optional.empty()
                : at(Message.of("fault.imported.head", name, rows[0], due.place()));
    }

    /** Entries or origins of which the ledger says nothing, or that are not there. */
    private Optional<Fault> foreign() throws SQLException {
        if (!table.stations().equals(stations())) {
            return at(Message.of("fault.imported.origins"));
        }
        try (Statements statements = new Statements(connection)) {
            long rows = ImportedTable.isIn(connection)
                    ? statements
                            .all("SELECT count(*) FROM imported", List.of(), row -> row.getLong(1))
                            .get(0)
                    : 0;
            long said = due.values().stream().mapToLong(OfRun::entries).sum();
            return rows == said ? Optional.empty() : at(Message.of("fault.imported.more", rows, said));
        }
    }

    private static Optional<Fault> at(Message why) {
        return Optional.of(new Fault(Optional.empty(), why));
    }
}
