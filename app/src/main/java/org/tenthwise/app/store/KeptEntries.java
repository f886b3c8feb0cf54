package org.tenthwise.app.store;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.RunName;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.ImportEvent;

/**
 * What a ledger holds, to be read. Used from one thread.
 *
 * <p>Every reading method throws {@link CouldNotRead} if the store has been damaged or taken away since it was opened.
 */
public interface KeptEntries extends AutoCloseable {

    /** No ledger has as many. */
    long MOST_ENTRIES = 1L << 36;

    /**
     * The entries of a run, in order; none if there is no such run.
     *
     * @param run its name in this store, see {@link RunName}: an entry of a run that came in from elsewhere has the
     *     place and the name it has there
     */
    List<Entry> entries(String run);

    /**
     * The runs in the order they were begun; {@link Entry#SHOP} is none. Those that came in from elsewhere stand behind
     * those of this store, origin by origin.
     */
    List<String> runs();

    /** What lists, suggestions and a history are read from. */
    History history();

    Head head();

    /** The head as it was after an entry; absent if there is no such entry. */
    Optional<Head> headAt(long seq);

    /** {@link RunHead#OF_NOTHING} if there is no such run. */
    RunHead runHead(String run);

    /** Whether any run was ever signed by a station. */
    boolean isSealed();

    /** All entries this store wrote, as they are stored, in order. */
    List<StoredEntry> stored();

    /** The entries of a run as they are stored, in order. */
    List<StoredEntry> stored(String run);

    /** The stores whose runs came in here, in the order their first did. */
    List<ImportEvent.Provenance> origins();

    /** The entry at a place of the ledger of another store, where it came in here. */
    Optional<StoredEntry> importedAt(String sign, long seq);

    /** Walks all entries and says whether the chain is whole. Never throws for what it finds. */
    Verification verify();

    /** Does nothing where it is closed already. */
    @Override
    void close();
}
