package org.tenthwise.app.export;

import java.time.OffsetDateTime;
import java.util.List;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.model.record.Sheet;

/**
 * All that a record is written from.
 *
 * @param entries  the entries of the run as they are stored, in order; those of {@code sheet.run()}
 * @param head     last entry of the whole ledger when the record is written, which need not belong to the run
 * @param version  of the tool that writes the record
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

    public StoredEntry first() {
        return entries.get(0);
    }

    public StoredEntry last() {
        return entries.get(entries.size() - 1);
    }
}
