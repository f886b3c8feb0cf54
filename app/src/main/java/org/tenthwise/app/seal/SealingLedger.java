package org.tenthwise.app.seal;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.history.History;
import org.tenthwise.app.key.StationKey;
import org.tenthwise.app.store.Arrivals;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.Incoming;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.app.store.NotImported;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.Seal;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.app.store.Verification;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ImportEvent;

/**
 * A ledger in which the station's key signs each run when it is closed, and again whatever is added to it then. What
 * closes a run and the seal behind it are added together or not at all, so no run can be left between the two.
 */
final class SealingLedger implements Ledger {

    private final Ledger ledger;
    private final StationKey key;
    /** Whether a run is closed, of those something was added to. Once closed, a run stays so. */
    private final Map<String, Boolean> closed = new HashMap<>();

    SealingLedger(Ledger ledger, StationKey key) {
        this.ledger = ledger;
        this.key = key;
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
        List<Entry> added = lastOfClosed.isEmpty()
                ? ledger.append(entries)
                : ledger.append(sealed(entries, lastOfClosed)).subList(0, entries.size());
        closed.putAll(closedWith);
        return added;
    }

    /** The entries, and behind them a seal for each run that is closed with them or was before. */
    private List<NewEntry> sealed(List<NewEntry> entries, Map<String, NewEntry> lastOfClosed) {
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

    /** What comes in from elsewhere has the seal of its own station, which stands. */
    @Override
    public Arrivals takeIn(Incoming incoming, OffsetDateTime at, String by) throws NotImported, CouldNotSave {
        return ledger.takeIn(incoming, at, by);
    }

    @Override
    public List<ImportEvent.Provenance> origins() {
        return ledger.origins();
    }

    @Override
    public Optional<StoredEntry> importedAt(String sign, long seq) {
        return ledger.importedAt(sign, seq);
    }

    @Override
    public List<Entry> entries(String run) {
        return ledger.entries(run);
    }

    @Override
    public List<String> runs() {
        return ledger.runs();
    }

    @Override
    public History history() {
        return ledger.history();
    }

    @Override
    public Head head() {
        return ledger.head();
    }

    @Override
    public Optional<Head> headAt(long seq) {
        return ledger.headAt(seq);
    }

    @Override
    public RunHead runHead(String run) {
        return ledger.runHead(run);
    }

    @Override
    public boolean isSealed() {
        return ledger.isSealed();
    }

    @Override
    public List<StoredEntry> stored() {
        return ledger.stored();
    }

    @Override
    public List<StoredEntry> stored(String run) {
        return ledger.stored(run);
    }

    @Override
    public Verification verify() {
        return ledger.verify();
    }

    @Override
    public void close() {
        ledger.close();
    }
}
