package org.tenthwise.app.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.words.Message;

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
    public Optional<Message> find(String hash) {
        String wanted = hash.strip();
        Map<String, RunHead> runs = new LinkedHashMap<>();
        for (StoredEntry entry : entries) {
            RunHead run = runs.getOrDefault(entry.run(), RunHead.OF_NOTHING).and(entry);
            runs.put(entry.run(), run);
            if (entry.hash().equalsIgnoreCase(wanted)) {
                return Optional.of(Message.of(
                        "head.of-entry",
                        entry.seq(),
                        behind(entries.stream()
                                .filter(later -> later.seq() > entry.seq())
                                .count())));
            }
            if (run.hash().equalsIgnoreCase(wanted)) {
                return Optional.of(Message.of(
                        "head.of-run",
                        entry.run(),
                        run.place(),
                        behind(entries.stream()
                                .filter(later -> later.run().equals(entry.run()) && later.seq() > entry.seq())
                                .count())));
            }
        }
        return Optional.empty();
    }

    private static Message behind(long entries) {
        return Message.of("head.behind").with("n", entries);
    }
}
