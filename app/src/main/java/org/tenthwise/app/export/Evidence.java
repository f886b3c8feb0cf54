package org.tenthwise.app.export;

import java.time.OffsetDateTime;
import java.util.List;
import org.tenthwise.app.session.Shop;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Run;

/**
 * All that a record is written from.
 *
 * @param entries  the entries of the run as they are stored, in order; those of {@code sheet.run()}
 * @param head     last entry of the whole ledger when the record is written, which need not belong to the run
 * @param version  of the tool that writes the record: {@code 0.1.0}
 * @param exported when the record is written, with the offset of the place
 */
public record Evidence(Sheet sheet, List<StoredEntry> entries, Head head, String version, OffsetDateTime exported) {

    public Evidence {
        entries = List.copyOf(entries);
        if (entries.size() != sheet.run().entries().size()) {
            throw new IllegalArgumentException("The run has %d entries, %d stored ones were given".formatted(
                    sheet.run().entries().size(), entries.size()));
        }
    }

    /** A run as it stands in a store now; entries that another adds meanwhile are left to the next record. */
    public static Evidence of(KeptEntries kept, String run, String version, OffsetDateTime exported) {
        Head head = kept.head();
        List<Entry> entries = kept.entries(run).stream().filter(entry -> entry.seq() <= head.seq()).toList();
        List<StoredEntry> stored = kept.stored(run).stream().filter(entry -> entry.seq() <= head.seq()).toList();
        return new Evidence(Shop.sheet(new Run(entries)), stored, head, version, exported);
    }

    /** The tool with its version, as records name it. */
    public String tool() {
        return "Tenthwise " + version;
    }

    public StoredEntry first() {
        return entries.get(0);
    }

    public StoredEntry last() {
        return entries.get(entries.size() - 1);
    }
}
