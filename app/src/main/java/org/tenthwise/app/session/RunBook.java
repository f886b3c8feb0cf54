package org.tenthwise.app.session;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.NewEntry;
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
    private Sheet sheet;
    /** What was worked out last of entries that may be added next; the sheet as it is where nothing was. */
    private Sheet ahead;

    private long othersChanged;

    RunBook(Ledger ledger, Clock clock, Plan plan, List<Entry> entries) {
        this.ledger = ledger;
        this.clock = clock;
        this.plan = plan;
        this.sheet = Sheet.of(plan, new Run(entries));
        this.ahead = sheet;
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

    /** How many entries of other runs, and of the shop, were added with those of this one. */
    long othersChanged() {
        return othersChanged;
    }

    KeptEntries kept() {
        return ledger;
    }

    /** What happens now, in this run. */
    List<NewEntry> happening(List<? extends Event> events) {
        return now(run().id(), events);
    }

    /** What the shop is told now, beside this run. */
    List<NewEntry> told(List<? extends Event> events) {
        return now(Entry.SHOP, events);
    }

    private List<NewEntry> now(String run, List<? extends Event> events) {
        OffsetDateTime now = now();
        return events.stream().map(event -> new NewEntry(run, now, by(), event)).toList();
    }

    /**
     * Does the sums of the run as it would be with entries of it behind the last; they need not be done again when
     * these are added.
     *
     * @throws IllegalArgumentException if no sum can be done with them
     * @throws ArithmeticException the same
     */
    void workOut(List<NewEntry> entries) {
        long seq = run().entries().get(run().entries().size() - 1).seq();
        Sheet worked = sheet;
        for (NewEntry entry : entries) {
            worked = worked.with(new Entry(++seq, entry.run(), entry.at(), entry.by(), entry.event()));
        }
        ahead = worked;
    }

    /** The sheet as it would be with entries of the run behind the last; none is added. */
    Sheet foresee(List<NewEntry> entries) {
        workOut(entries);
        return ahead;
    }

    /** Adds entries of this run and of others, all of them or none. */
    void add(List<NewEntry> added) throws CouldNotSave {
        List<Entry> kept = ledger.append(added);
        List<Entry> here =
                kept.stream().filter(entry -> entry.run().equals(run().id())).toList();
        othersChanged += kept.size() - here.size();
        sheet = isAheadBy(here) ? ahead : behind(here);
        ahead = sheet;
    }

    void add(Event event) throws CouldNotSave {
        add(happening(List.of(event)));
    }

    private boolean isAheadBy(List<Entry> added) {
        int before = run().entries().size();
        List<Entry> worked = ahead.run().entries();
        return worked.subList(before, worked.size()).equals(added);
    }

    private Sheet behind(List<Entry> added) {
        Sheet worked = sheet;
        for (Entry entry : added) {
            worked = worked.with(entry);
        }
        return worked;
    }
}
