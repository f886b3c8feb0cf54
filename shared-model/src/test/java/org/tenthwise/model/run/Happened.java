package org.tenthwise.model.run;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/** A run as it grows, one entry after the other; "Setter 1" began it. In millimetres. */
final class Happened {

    static final Event.Begun BEGUN = new Event.Begun(new PartId("X-1", "A"), "1", "", "", new PlanSource("", ""));

    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-11-25T07:31:00+01:00");

    private final List<Entry> entries = new ArrayList<>();

    Happened() {
        did(BEGUN);
    }

    Entry did(Event event) {
        return did("Setter 1", event);
    }

    Entry did(String by, Event event) {
        Entry entry = new Entry(entries.size() + 1, "r", AT, by, event);
        entries.add(entry);
        return entry;
    }

    Entry read(int step, String typed) {
        return did(new StepEvent.ReadingTaken(step, "1.1", mm(typed)));
    }

    Entry struckOut(Entry entry, String reason) {
        return did(new Event.StruckOut(entry.seq(), reason));
    }

    Run run() {
        return new Run(entries);
    }

    static Written mm(String figure) {
        return new Written(figure, Unit.MILLIMETRE);
    }
}
