package org.tenthwise.app.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.tenthwise.app.store.Verification.Fault;
import org.tenthwise.model.run.Entry;

/** Walks a ledger, entry by entry from the first, and keeps the first thing that is not as it was written. */
public final class ChainCheck {

    private long entries;
    private Head head = Head.OF_NOTHING;
    private Optional<Fault> fault = Optional.empty();
    private final Map<String, RunChain> runs = new LinkedHashMap<>();
    private final Map<String, List<Long>> unknown = new TreeMap<>();
    private final List<String> remarks = new ArrayList<>();
    private final BackwardTime time = new BackwardTime();
    private boolean mayLackItsLast;

    /**
     * Looks at the next entry.
     *
     * @param body its text as stored, which need not be text any more
     */
    public void next(StoredEntry entry, byte[] body) {
        entries++;
        if (fault.isEmpty()) {
            fault = outOfPlace(entry).or(() -> within(entry, body)).or(() -> outOfPlaceInItsRun(entry));
            if (fault.isEmpty()) {
                head = entry.asHead();
                time.next(entry);
                if (!EntryText.knows(entry.kind())) {
                    unknown.computeIfAbsent(entry.kind(), kind -> new ArrayList<>())
                            .add(entry.seq());
                }
            }
        }
    }

    /** Keeps a fault found by other means; as a remark if something was found bad before. */
    public void broken(Fault found) {
        if (fault.isEmpty()) {
            fault = Optional.of(found);
        } else {
            remarks.add(found.why());
        }
    }

    /** Keeps that the last entries may have stood in a file beside. */
    public void mayLackItsLast() {
        mayLackItsLast = true;
    }

    /** Keeps as a fault that a run does not end with an entry that vouches for those before it. */
    public void everyRunIsTied() {
        runs.forEach((run, chain) -> {
            if (!chain.tied()) {
                broken(new Fault(
                        Optional.of(chain.head().seq()),
                        "Entry %d does not say what came before it in run %s."
                                .formatted(chain.head().seq(), run)));
            }
        });
    }

    public Verification result() {
        List<String> said = new ArrayList<>(remarks);
        time.remark().ifPresent(said::add);
        return new Verification(entries, head, fault, unknown, said, mayLackItsLast);
    }

    /** The last entry up to which all is well. */
    public Head head() {
        return head;
    }

    /**
     * What is wrong with an entry by itself, wherever it stands: its hash, its text, or what is drawn out of the text.
     */
    public static Optional<Fault> within(StoredEntry stored) {
        return within(stored, stored.body().getBytes(UTF_8));
    }

    private static Optional<Fault> within(StoredEntry stored, byte[] body) {
        if (!Chain.hash(stored.previous(), body).equals(stored.hash())) {
            return at(
                    stored,
                    "Entry %d is not as it was written: its text does not give its hash.".formatted(stored.seq()));
        }
        Entry entry;
        try {
            entry = EntryText.read(stored.seq(), body);
        } catch (UnreadableEntry e) {
            return at(stored, "The text of entry %d cannot be read: %s.".formatted(stored.seq(), e.getMessage()));
        }
        return differing(stored, entry)
                .flatMap(column -> at(
                        stored, "The \"%s\" of entry %d is not what its text says.".formatted(column, stored.seq())));
    }

    private Optional<Fault> outOfPlaceInItsRun(StoredEntry entry) {
        RunChain chain = runs.computeIfAbsent(entry.run(), run -> new RunChain());
        chain.next(entry);
        return chain.fault();
    }

    private Optional<Fault> outOfPlace(StoredEntry entry) {
        long due = head.seq() + 1;
        if (entry.seq() > due) {
            return Optional.of(new Fault(
                    Optional.of(due),
                    head.seq() == 0
                            ? "Entry 1 is missing: the ledger starts with entry %d.".formatted(entry.seq())
                            : "Entry %d is missing: entry %d is followed by entry %d."
                                    .formatted(due, head.seq(), entry.seq())));
        }
        if (entry.seq() < due) {
            return at(entry, "Entry %d stands where entry %d is due.".formatted(entry.seq(), due));
        }
        if (!entry.previous().equals(head.hash())) {
            return at(
                    entry,
                    head.seq() == 0
                            ? "Entry 1 does not start the ledger: it names an entry before it."
                            : "Entry %d does not follow entry %d as it now stands.".formatted(entry.seq(), head.seq()));
        }
        return Optional.empty();
    }

    private static Optional<String> differing(StoredEntry stored, Entry entry) {
        if (!stored.run().equals(entry.run())) {
            return Optional.of("run");
        }
        if (!stored.kind().equals(EntryText.kind(entry.event()))) {
            return Optional.of("kind");
        }
        if (!stored.at().equals(entry.at().toInstant().toString())) {
            return Optional.of("at");
        }
        return stored.by().equals(entry.by()) ? Optional.empty() : Optional.of("by");
    }

    private static Optional<Fault> at(StoredEntry entry, String why) {
        return Optional.of(new Fault(Optional.of(entry.seq()), why));
    }
}
