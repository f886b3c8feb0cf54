package org.tenthwise.app.session;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;

/**
 * The run in hand as the ledger has it. What is added is on the disk when it returns, and stands in the sheet from then
 * on.
 */
final class RunBook {

    private final Ledger ledger;
    private final Clock clock;
    private final Plan plan;
    private final List<Entry> entries;
    private Sheet sheet;

    RunBook(Ledger ledger, Clock clock, Plan plan, List<Entry> entries) {
        this.ledger = ledger;
        this.clock = clock;
        this.plan = plan;
        this.entries = new ArrayList<>(entries);
        this.sheet = Sheet.of(plan, new Run(entries));
    }

    Plan plan() {
        return plan;
    }

    Sheet sheet() {
        return sheet;
    }

    Run run() {
        return sheet.run();
    }

    /** Who has the run in hand. */
    String by() {
        return run().by();
    }

    OffsetDateTime now() {
        return OffsetDateTime.now(clock);
    }

    KeptEntries kept() {
        return ledger;
    }

    /** Makes the sense of a gauge known to the shop. */
    void know(Gauge gauge) throws CouldNotSave {
        ledger.append(Entry.SHOP, now(), by(), new Event.GaugeKnown(gauge));
    }

    /** Adds entries of this run and of others, all of them or none. */
    void add(List<NewEntry> added) throws CouldNotSave {
        ledger.append(added).stream()
                .filter(entry -> entry.run().equals(run().id()))
                .forEach(entries::add);
        sheet = Sheet.of(plan, new Run(entries));
    }

    void add(Event event) throws CouldNotSave {
        entries.add(ledger.append(run().id(), now(), by(), event));
        sheet = Sheet.of(plan, new Run(entries));
    }
}
