package org.tenthwise.app.store.sqlite;

import java.io.IOException;
import java.nio.file.Files;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.Plans;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.app.store.Verification;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.ImportEvent;

/**
 * A store open for reading alone, also while another process writes to it. Each question is asked over a connection of
 * its own and sees the entries that are saved by then.
 */
final class SqliteReading implements KeptEntries {

    private final StoreFile file;
    private final StoreErrors trouble;
    private final Plans plans = new Plans();
    private Optional<DrawnCopy> copy = Optional.empty();

    /** The store in memory as it was at a head, with tables drawn from it. */
    private record DrawnCopy(Head head, Connection connection) {}

    private SqliteReading(StoreFile file) {
        this.file = file;
        this.trouble = new StoreErrors(file);
    }

    /** Makes sure that there is a store of a kind this release knows; changes nothing. */
    static SqliteReading open(StoreFile file) throws CouldNotOpen {
        SqliteReading reading = new SqliteReading(file);
        StoreErrors trouble = reading.trouble;
        if (!file.exists()) {
            throw trouble.notFound();
        }
        if (!Files.isRegularFile(file.path())) {
            throw trouble.notAStore();
        }
        try {
            if (reading.ask(Schema::application) != Schema.APPLICATION) {
                throw trouble.notAStore();
            }
            int step = reading.ask(Schema::step);
            if (step > Schema.NEWEST) {
                throw trouble.newer(step);
            }
            reading.ask(Schema::objects);
        } catch (SQLException e) {
            throw trouble.opening(e);
        } catch (IOException e) {
            throw trouble.unreadable(e);
        }
        return reading;
    }

    @Override
    public List<Entry> entries(String run) {
        return answer(connection -> new AllRuns(connection).entries(run));
    }

    @Override
    public List<String> runs() {
        return answer(connection -> new AllRuns(connection).names());
    }

    /**
     * Where the drawn tables are of another form, or none, they are drawn in memory for as long as nothing is added.
     */
    @Override
    public History history() {
        return new SqliteHistory(this::drawn, plans);
    }

    private <T> T drawn(Query<T> question) {
        return answer(
                connection -> question.of(DrawnTables.areUpToDate(connection) ? connection : inMemory(connection)));
    }

    private Connection inMemory(Connection connection) throws SQLException {
        Head head = new LedgerTable(connection).head();
        if (copy.filter(made -> made.head().equals(head)).isEmpty()) {
            dropCopy();
            Connection made = Connections.copyInMemory(connection);
            copy = Optional.of(new DrawnCopy(head, made));
            try (DrawnTables tables = new DrawnTables(made, plans)) {
                tables.makeAnew();
            } catch (SQLException | RuntimeException e) {
                dropCopy();
                throw e;
            }
        }
        return copy.get().connection();
    }

    private void dropCopy() throws SQLException {
        if (copy.isPresent()) {
            copy.get().connection().close();
            copy = Optional.empty();
        }
    }

    @Override
    public Head head() {
        return answer(connection -> new LedgerTable(connection).head());
    }

    @Override
    public Optional<Head> headAt(long seq) {
        return answer(connection -> new LedgerTable(connection).headAt(seq));
    }

    @Override
    public RunHead runHead(String run) {
        return answer(connection -> new AllRuns(connection).head(run));
    }

    @Override
    public boolean isSealed() {
        return answer(connection -> new LedgerTable(connection).isSealed());
    }

    @Override
    public List<StoredEntry> stored() {
        return answer(connection -> new LedgerTable(connection).stored());
    }

    @Override
    public List<StoredEntry> stored(String run) {
        return answer(connection -> new AllRuns(connection).stored(run));
    }

    @Override
    public List<ImportEvent.Provenance> origins() {
        return answer(connection -> new ImportedTable(connection)
                .stations().stream().map(ImportedTable.Station::origin).toList());
    }

    @Override
    public Optional<StoredEntry> importedAt(String sign, long seq) {
        return answer(connection -> new ImportedTable(connection).at(sign, seq));
    }

    @Override
    public Verification verify() {
        Verification kept = verifyKept();
        return kept.whole() ? kept.and(drawnFault()) : kept;
    }

    /** The entries and the tables, without the file around them: no look at them keeps a writer waiting for long. */
    Verification verifyEntries() {
        return answer(connection -> new Verifying(connection).entries());
    }

    /** What is wrong with the tables drawn from the entries, which are whole. */
    Optional<Verification.Fault> drawnFault() {
        return answer(connection -> new DrawnCheck(connection).fault());
    }

    /** The entries, the tables and the file around them, without what is drawn: for a copy, made byte for byte. */
    Verification verifyKept() {
        CompletableFuture<Optional<Verification.Fault>> around =
                CompletableFuture.supplyAsync(() -> answer(Verifying::aroundTheEntries));
        Verification found = verifyEntries();
        try {
            Verification all = found.and(around.join());
            return file.keptWithLog() ? all.perhapsWithoutItsLast() : all;
        } catch (CompletionException e) {
            throw e.getCause() instanceof CouldNotRead cause ? cause : e;
        } catch (IOException e) {
            throw trouble.reading(e);
        }
    }

    /** What stands behind an entry that was found to be well before; all where there is no such entry. */
    Verification verifyBehind(Head checked) {
        return answer(connection -> new Verifying(connection).behind(checked)).orElseGet(this::verifyKept);
    }

    @Override
    public void close() {
        try {
            dropCopy();
        } catch (SQLException e) {
            throw trouble.reading(e);
        }
    }

    private <T> T answer(Query<T> question) {
        try {
            return ask(question);
        } catch (SQLException | IOException e) {
            throw trouble.reading(e);
        }
    }

    /** Asks the file at rest where it is at rest, and once more, sharing it, if another began to write meanwhile. */
    <T> T ask(Query<T> question) throws SQLException, IOException {
        Optional<StoreFile.Stamp> before = file.atRest();
        if (before.isPresent()) {
            try (Connection connection = Connections.toRead(file.urlAtRest())) {
                T answer = question.of(connection);
                if (file.atRest().equals(before)) {
                    return answer;
                }
            } catch (SQLException | CouldNotRead e) {
                if (file.atRest().equals(before)) {
                    throw e;
                }
            }
        }
        return share(question);
    }

    /** An entry left unfinished, its process killed or the power gone, is taken back first; whoever opens does that. */
    private <T> T share(Query<T> question) throws SQLException {
        dropCopy();
        try (Connection connection = Connections.toRead(file.urlToShare())) {
            return question.of(connection);
        } catch (SQLException e) {
            if (!StoreErrors.isUnfinished(e)) {
                throw e;
            }
        }
        try (Connection connection = Connections.toTakeBack(file.urlToWrite())) {
            return question.of(connection);
        }
    }
}
