package org.tenthwise.app.export;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.EntryText;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.app.store.UnreadableEntry;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Run;

/**
 * All that a record is written from. When it is written is no part of it: nothing could prove that, and the same run as
 * it stood after the same entry is the same record, whenever it is asked for.
 *
 * @param entries the entries of the run as they are stored, in order; those of {@code sheet.run()}
 * @param version of the tool that writes the record: {@code 0.1.0}
 */
public record Evidence(Sheet sheet, List<StoredEntry> entries, String version) {

    public Evidence {
        entries = List.copyOf(entries);
        if (entries.size() != sheet.run().entries().size()) {
            throw new IllegalArgumentException("The run has %s entries, %s stored ones were given"
                    .formatted(sheet.run().entries().size(), entries.size()));
        }
    }

    /** A run as it stands in a store now; entries that another adds meanwhile are left to the next record. */
    public static Evidence of(KeptEntries kept, String run, String version) {
        List<StoredEntry> stored = kept.stored(run);
        long last = stored.get(stored.size() - 1).seq();
        List<Entry> entries =
                kept.entries(run).stream().filter(entry -> entry.seq() <= last).toList();
        return new Evidence(Runs.sheet(kept, new Run(entries)), stored, version);
    }

    /**
     * From the entries alone, without a store; absent where they are those of no run, or of one that is not understood.
     */
    public static Optional<Evidence> ofStored(List<StoredEntry> stored, String version) {
        try {
            List<Entry> entries = new ArrayList<>();
            for (StoredEntry entry : stored) {
                entries.add(EntryText.read(entry.seq(), entry.body().getBytes(UTF_8)));
            }
            Run run = new Run(entries);
            return new PlanReader().readKept(run.begun().plan().text()) instanceof PlanReading.Good good
                    ? Optional.of(new Evidence(Sheet.of(good.plan(), run), stored, version))
                    : Optional.empty();
        } catch (UnreadableEntry | IllegalArgumentException | ArithmeticException | NoSuchElementException e) {
            return Optional.empty();
        }
    }

    /** The tool with its version, as records name it. */
    public String tool() {
        return tool(version);
    }

    /** The tool of a version, as what it writes names it. */
    public static String tool(String version) {
        return "Tenthwise " + version;
    }

    public StoredEntry first() {
        return entries.get(0);
    }

    public StoredEntry last() {
        return entries.get(entries.size() - 1);
    }

    /** Of the run after its last entry: what the record is known by. */
    public RunHead head() {
        RunHead head = RunHead.OF_NOTHING;
        for (StoredEntry entry : entries) {
            head = head.and(entry);
        }
        return head;
    }

    /** When the last entry was made: what the record says, it says of the run at that moment. */
    public OffsetDateTime stands() {
        List<Entry> entries = sheet.run().entries();
        return entries.get(entries.size() - 1).at();
    }
}
