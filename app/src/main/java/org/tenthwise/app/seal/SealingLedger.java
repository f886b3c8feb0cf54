package org.tenthwise.app.seal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.key.KeyFile;
import org.tenthwise.app.key.NoKey;
import org.tenthwise.app.key.StationKey;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.LaidOverLedger;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.Seal;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;

/**
 * A ledger in which the station's key signs each run when it is closed, and again whatever is added to it then. What
 * closes a run and the seal behind it are added together or not at all, so no run can be left between the two. What
 * comes in from elsewhere has the seal of its own station, which stands.
 *
 * <p>The key is the one in the file when something is sealed, so that another one counts at once. Where there is none
 * any more, the one read last goes on; where there never was one, nothing is sealed.
 */
final class SealingLedger extends LaidOverLedger {

    private final KeyFile file;
    private Optional<StationKey> last;
    /** Whether a run is closed, of those something was added to. Once closed, a run stays so. */
    private final Map<String, Boolean> closed = new HashMap<>();

    /** @param last the key as it was read when the ledger was opened */
    SealingLedger(Ledger ledger, KeyFile file, Optional<StationKey> last) {
        super(ledger);
        this.file = file;
        this.last = last;
    }

    private Optional<StationKey> key() {
        try {
            last = Optional.of(file.open());
        } catch (NoKey e) {
            // said when the store was opened; the one read last goes on
        }
        return last;
    }

    @Override
    public List<Entry> append(List<NewEntry> entries) throws CouldNotSave {
        Map<String, NewEntry> lastOfClosed = new LinkedHashMap<>();
        Map<String, Boolean> closedWith = new HashMap<>();
        for (NewEntry entry : entries) {
            boolean closes = entry.event().as(Event.Closed.class).isPresent();
            if (closes || closedWith.computeIfAbsent(entry.run(), this::isClosed)) {
                closedWith.put(entry.run(), true);
                lastOfClosed.put(entry.run(), entry);
            }
        }
        Optional<StationKey> key = lastOfClosed.isEmpty() ? Optional.empty() : key();
        List<Entry> added = key.isEmpty()
                ? ledger.append(entries)
                : ledger.append(sealed(key.get(), entries, lastOfClosed)).subList(0, entries.size());
        closed.putAll(closedWith);
        return added;
    }

    /** The entries, and behind them a seal for each run that is closed with them or was before. */
    private List<NewEntry> sealed(StationKey key, List<NewEntry> entries, Map<String, NewEntry> lastOfClosed) {
        Head end = ledger.head();
        Map<String, RunHead> heads = new HashMap<>();
        for (NewEntry entry : entries) {
            RunHead run = heads.computeIfAbsent(entry.run(), ledger::runHead);
            StoredEntry stored = StoredEntry.behind(end, run, entry);
            end = stored.asHead();
            heads.put(entry.run(), run.and(stored));
        }
        List<NewEntry> sealed = new ArrayList<>(entries);
        lastOfClosed.forEach((run, last) ->
                sealed.add(new NewEntry(run, last.at(), last.by(), Seal.by(key, run, heads.get(run), last.at()))));
        return sealed;
    }

    private boolean isClosed(String run) {
        return !run.equals(Entry.SHOP)
                && closed.computeIfAbsent(run, unknown -> ledger.entries(run).stream()
                        .anyMatch(entry -> entry.event().as(Event.Closed.class).isPresent()));
    }
}
