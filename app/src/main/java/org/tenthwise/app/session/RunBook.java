package org.tenthwise.app.session;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;

/** The run in hand as the ledger has it. What is added is on the disk when it returns, and stands in the sheet from then on. */
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

    void add(Event event) throws CouldNotSave {
        entries.add(ledger.append(run().id(), now(), by(), event));
        sheet = Sheet.of(plan, new Run(entries));
    }
}
