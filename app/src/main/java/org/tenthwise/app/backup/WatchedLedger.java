package org.tenthwise.app.backup;

import java.time.OffsetDateTime;
import java.util.List;
import org.tenthwise.app.store.Arrivals;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Incoming;
import org.tenthwise.app.store.LaidOverLedger;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.app.store.NotImported;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;

/** A ledger that says when a run is closed in it, and when runs of another store came in. */
final class WatchedLedger extends LaidOverLedger {

    private final Runnable changed;

    WatchedLedger(Ledger ledger, Runnable changed) {
        super(ledger);
        this.changed = changed;
    }

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
}
