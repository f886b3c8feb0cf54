package org.tenthwise.app.backup;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.history.History;
import org.tenthwise.app.store.Arrivals;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.Incoming;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.app.store.NotImported;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.app.store.Verification;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ImportEvent;

/** A ledger that says when a run is closed in it, and when runs of another store came in. */
record WatchedLedger(Ledger ledger, Runnable changed) implements Ledger {

    @Override
    public List<Entry> append(List<NewEntry> entries) throws CouldNotSave {
        List<Entry> added = ledger.append(entries);
        if (added.stream()
                .anyMatch(entry -> entry.event().as(Event.Closed.class).isPresent())) {
            changed.run();
        }
        return added;
    }

    @Override
    public Arrivals takeIn(Incoming incoming, OffsetDateTime at, String by) throws NotImported, CouldNotSave {
        Arrivals arrivals = ledger.takeIn(incoming, at, by);
        if (arrivals.addAnything()) {
            changed.run();
        }
        return arrivals;
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
