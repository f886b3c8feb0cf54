package org.tenthwise.app.export;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tenthwise.app.export.qif.QifRecord;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.checklists.rules.SampleReader;
import org.tenthwise.checklists.rules.SampleReading;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.ShopEvent;

/** Evidence to write records from: the invented demo parts walked through their samples, and changes to that. */
public final class Records {

    /** An invented run, entry by entry, in a ledger that holds other things too. */
    public static final class Walk {

        private final String name;
        private final Plan plan;
        private final String by;
        private final List<Entry> entries = new ArrayList<>();
        private final List<StoredEntry> stored = new ArrayList<>();
        private final Map<String, RunHead> runs = new HashMap<>();
        private Head head = Head.OF_NOTHING;
        private OffsetDateTime at = OffsetDateTime.parse("2026-11-25T07:31:12+01:00");

        public Walk(Plan plan, String by) {
            this("LG-2207-C-014", plan, by);
        }

        private Walk(String name, Plan plan, String by) {
            this.name = name;
            this.plan = plan;
            this.by = by;
        }

        /** Adds what happened, forty seconds after what happened before; something of the shop belongs to no run. */
        public Walk add(Event event) {
            String run = event instanceof ShopEvent.GaugeKnown ? Entry.SHOP : name;
            NewEntry entry = new NewEntry(run, at, by, event);
            RunHead before = runs.getOrDefault(run, RunHead.OF_NOTHING);
            StoredEntry row = StoredEntry.behind(head, before, entry);
            if (run.equals(name)) {
                entries.add(new Entry(row.seq(), run, at, by, event));
                stored.add(row);
            }
            head = row.asHead();
            runs.put(run, before.and(row));
            at = at.plusSeconds(40);
            return this;
        }

        public Walk addAll(List<Event> events) {
            events.forEach(this::add);
            return this;
        }

        /** Place in the ledger of the last entry. */
        public long seq() {
            return head.seq();
        }

        public Evidence evidence() {
            return new Evidence(Sheet.of(plan, new Run(entries)), stored, "0.1.0");
        }
    }

    /** What is inside a printed record. */
    public static final List<RecordFormat> DATA =
            List.of(new CsvRecord(), new JsonRecord(), new AccountTable(), new QifRecord());

    private Records() {}

    public static ReadingsFile passing(DemoPart part) {
        return sample(part, part.passingReadings());
    }

    public static ReadingsFile failing(DemoPart part) {
        return sample(part, part.failingReadings());
    }

    /** A sample as far as its first {@code events} events; all of it where there are no more. */
    public static Walk walk(DemoPart part, ReadingsFile sample, int events) {
        return new Walk(part.plan(), sample.by())
                .add(sample.begun())
                .addAll(sample.events()
                        .subList(0, Math.min(events, sample.events().size())));
    }

    /** The same as a run of another name. */
    static Walk walk(String name, DemoPart part, ReadingsFile sample, int events) {
        return new Walk(name, part.plan(), sample.by())
                .add(sample.begun())
                .addAll(sample.events()
                        .subList(0, Math.min(events, sample.events().size())));
    }

    public static Evidence whole(DemoPart part, ReadingsFile sample) {
        return walk(part, sample, Integer.MAX_VALUE).evidence();
    }

    /** A plan walked with a readings file, to its last event. */
    public static Evidence whole(Plan plan, String readings) {
        ReadingsFile sample = sample(plan, readings);
        return new Walk(plan, sample.by())
                .add(sample.begun())
                .addAll(sample.events())
                .evidence();
    }

    private static ReadingsFile sample(DemoPart part, String readings) {
        return sample(part.plan(), readings);
    }

    private static ReadingsFile sample(Plan plan, String readings) {
        SampleReading reading = new SampleReader().read(readings, plan);
        if (reading instanceof SampleReading.Good good) {
            return good.sample();
        }
        throw new IllegalStateException(((SampleReading.Bad) reading).problems().toString());
    }
}
