package org.tenthwise.app.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Looks for a hash that was printed or kept elsewhere: what holds it was not cut off before it. The hash of an entry is
 * the head of the ledger as it was then; the head of a run has a hash of its own.
 */
public final class HeadSearch {

    private final List<StoredEntry> entries;

    /** @param entries of a whole ledger or of one run, in order */
    public HeadSearch(List<StoredEntry> entries) {
        this.entries = List.copyOf(entries);
    }

    /** A sentence that says where the hash is; absent if it is nowhere. */
    public Optional<String> find(String hash) {
        String wanted = hash.strip();
        Map<String, RunHead> runs = new LinkedHashMap<>();
        for (StoredEntry entry : entries) {
            RunHead run = runs.getOrDefault(entry.run(), RunHead.OF_NOTHING).and(entry);
            runs.put(entry.run(), run);
            if (entry.hash().equalsIgnoreCase(wanted)) {
                return Optional.of("The hash is that of entry %d: nothing up to it was cut off, and %s."
                        .formatted(
                                entry.seq(),
                                behind(entries.stream()
                                        .filter(later -> later.seq() > entry.seq())
                                        .count())));
            }
            if (run.hash().equalsIgnoreCase(wanted)) {
                return Optional.of(
                        ("The hash is that of run %s up to its entry %d: nothing of the run up to it was cut off, "
                                        + "and %s.")
                                .formatted(
                                        entry.run(),
                                        run.place(),
                                        behind(entries.stream()
                                                .filter(later ->
                                                        later.run().equals(entry.run()) && later.seq() > entry.seq())
                                                .count())));
            }
        }
        return Optional.empty();
    }

    private static String behind(long entries) {
        return entries == 0
                ? "it is the last"
                : entries == 1 ? "1 entry stands behind it" : "%d entries stand behind it".formatted(entries);
    }
}
