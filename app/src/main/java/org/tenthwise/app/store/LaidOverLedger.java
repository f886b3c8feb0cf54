package org.tenthwise.app.store;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.history.History;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.ImportEvent;

/** A ledger laid over another, which it asks for everything it does not do itself. */
public abstract class LaidOverLedger implements Ledger {

    protected final Ledger ledger;

    protected LaidOverLedger(Ledger ledger) {
        this.ledger = ledger;
    }

    @Override
    public List<Entry> append(List<NewEntry> entries) throws CouldNotSave {
        return ledger.append(entries);
    }

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
