package org.tenthwise.app.store.sqlite;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.tenthwise.app.history.Plans;
import org.tenthwise.app.history.RunDigest;
import org.tenthwise.app.history.RunDigests;
import org.tenthwise.app.history.RunName;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;

/**
 * Keeps the tables that are drawn from the ledger. They change in the transaction that adds the entries they come from,
 * and are made anew where they are of another form or were left behind by the ledger.
 */
final class DrawnTables implements AutoCloseable {

    /**
     * Its number rises with every change of what is drawn or how. What another release drew is of another form: it may
     * not know what stands in the entries, or judge it otherwise.
     */
    static final String FORM = "14 by "
            + Optional.ofNullable(DrawnTables.class.getPackage().getImplementationVersion())
                    .orElse("unreleased");

    private final Connection connection;
    private final LedgerTable ledger;
    private final ImportedTable imported;
    private final AllRuns all;
    private final RunDigests digests;
    private final Statements statements;
    private final DigestRows rows;
    /** Of the run drawn last, so that the next entry of the same run costs no more than what it changes. */
    private Optional<RunDigest> last = Optional.empty();

    DrawnTables(Connection connection, Plans plans) {
        this.connection = connection;
        this.ledger = new LedgerTable(connection);
        this.imported = new ImportedTable(connection);
        this.all = new AllRuns(connection);
        this.digests = new RunDigests(plans);
        this.statements = new Statements(connection);
        this.rows = new DigestRows(statements);
    }

    /** Whether they are there, of this form, and drawn from all entries there are. */
    static boolean areUpToDate(Connection connection) throws SQLException {
        if (!DrawnSchema.there(connection).equals(DrawnSchema.due())) {
            return false;
        }
        Head head = new LedgerTable(connection).head();
        try (Statements statements = new Statements(connection)) {
            return statements
                    .all("SELECT form || ' ' || seq || ' ' || hash FROM drawn_form", List.of(), row -> row.getString(1))
                    .equals(List.of(FORM + " " + head.seq() + " " + head.hash()));
        }
    }

    /**
     * Makes them anew where they are not up to date.
     *
     * @param asDrawn whether their rows may be those that were drawn; where not, they are made anew anyhow
     */
    static void bringUpToDate(Connection connection, boolean asDrawn) throws SQLException {
        if (!asDrawn || !areUpToDate(connection)) {
            try (DrawnTables tables = new DrawnTables(connection, new Plans())) {
                Transaction.in(connection, () -> {
                    tables.makeAnew();
                    return true;
                });
            }
        }
    }

    /**
     * Draws the runs of entries just added; within their transaction. Where that is taken back the run drawn last is
     * not to be relied on: an entry of its own can be told by its place.
     */
    List<Entry> draw(List<Entry> added) throws SQLException {
        long end = added.get(0).seq();
        last = last.filter(digest -> lastSeq(digest) < end);
        Map<String, List<Entry>> byRun = new LinkedHashMap<>();
        TreeMap<Long, String> order = new TreeMap<>();
        for (Entry entry : added) {
            byRun.computeIfAbsent(entry.run(), run -> new ArrayList<>()).add(entry);
        }
        byRun.forEach(
                (run, entries) -> order.put(entries.get(entries.size() - 1).seq(), run));
        for (String run : order.values()) {
            if (!run.equals(Entry.SHOP)) {
                draw(run, byRun.get(run));
            }
        }
        rows.drawnUpTo(FORM, ledger.head());
        return added;
    }

    private void draw(String run, List<Entry> added) throws SQLException {
        boolean again = last.filter(digest -> digest.run().id().equals(run)).isPresent();
        boolean begins = added.get(0).event().as(Event.Begun.class).isPresent();
        Optional<RunDigest> before = again ? last : begins ? Optional.empty() : before(run, added);
        Optional<RunDigest> now = before.isPresent()
                ? before.map(digest -> digests.after(digest, added))
                : digests.of(begins ? added : ledger.entries(run));
        if (now.isPresent()) {
            rows.write(now.get(), before, again);
            last = now;
        }
    }

    private Optional<RunDigest> before(String run, List<Entry> added) throws SQLException {
        List<Entry> entries = ledger.entries(run);
        return digests.of(entries.subList(0, entries.size() - added.size()));
    }

    /** Draws runs that came in just now, by their names here; within their transaction. */
    void drawImported(List<String> runs) throws SQLException {
        for (String run : runs) {
            RunName name = RunName.of(run);
            long behind =
                    imported.station(name.origin().orElseThrow()).orElseThrow().number() * KeptEntries.MOST_ENTRIES;
            Optional<RunDigest> digest = digests.of(all.entries(run));
            if (digest.isPresent()) {
                rows.writeImported(digest.get().imported(run, behind), behind);
            }
        }
    }

    private static long lastSeq(RunDigest digest) {
        List<Entry> entries = digest.of().entries();
        return entries.get(entries.size() - 1).seq();
    }

    @Override
    public void close() throws SQLException {
        statements.close();
    }

    /** Throws away whatever is drawn and draws all of it from the entries; within a transaction. */
    void makeAnew() throws SQLException {
        last = Optional.empty();
        statements.close();
        DrawnSchema.throwAway(connection);
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate(DrawnSchema.text());
        }
        for (String run : ledger.runsByLast()) {
            Optional<RunDigest> digest = digests.of(ledger.entries(run));
            if (digest.isPresent()) {
                rows.write(digest.get(), Optional.empty(), false);
            }
        }
        drawImported(imported.runs());
        rows.drawnUpTo(FORM, ledger.head());
    }
}
