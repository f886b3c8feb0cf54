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
import org.tenthwise.model.run.Event;

/** Walks a ledger, entry by entry in order, and keeps the first thing that is not as it was written. */
public final class ChainCheck {

    private long entries;
    private Head head;
    private Optional<Fault> fault = Optional.empty();
    private final Map<String, RunHead> runsBefore;
    private final Map<String, RunChain> runs = new LinkedHashMap<>();
    private final Map<String, List<Long>> unknown = new TreeMap<>();
    private final List<String> remarks = new ArrayList<>();
    private final BackwardTime time = new BackwardTime();

    /** From the first entry. */
    public ChainCheck() {
        this(Head.OF_NOTHING, Map.of());
    }

    /**
     * Goes on behind an entry up to which all is well.
     *
     * @param runs heads of the runs as they were then; one that is not named had no entry
     */
    public ChainCheck(Head from, Map<String, RunHead> runs) {
        this.entries = from.seq();
        this.head = from;
        this.runsBefore = Map.copyOf(runs);
    }

    /**
     * Looks at the next entry.
     *
     * @param body its text as stored, which need not be text any more
     */
    public void next(StoredEntry entry, byte[] body) {
        entries++;
        if (fault.isEmpty()) {
            fault = outOfPlace(entry).or(() -> hashedOtherwise(entry, body)).or(() -> misread(entry, body));
            if (fault.isEmpty()) {
                head = entry.asHead();
            }
        }
    }

    private Optional<Fault> misread(StoredEntry stored, byte[] body) {
        EntryText.Said said;
        try {
            said = EntryText.said(stored.seq(), body);
        } catch (UnreadableEntry e) {
            return unreadable(stored, e);
        }
        Optional<Fault> differing = differing(stored, said.entry()).or(() -> outOfPlaceInItsRun(stored, said.before()));
        if (differing.isEmpty()) {
            time.next(said.entry());
            if (said.entry().event().as(Event.Unknown.class).isPresent()) {
                unknown.computeIfAbsent(stored.kind(), kind -> new ArrayList<>())
                        .add(stored.seq());
            }
        }
        return differing;
    }

    /** Keeps that the file is damaged behind the last entry looked at. */
    public void cannotBeReadOn() {
        broken(new Fault(
                Optional.of(head.seq() + 1),
                "Entry %d cannot be read: the file is damaged there.".formatted(head.seq() + 1)));
    }

    /** Keeps a fault found by other means; as a remark if something was found bad before. */
    public void broken(Fault found) {
        if (fault.isEmpty()) {
            fault = Optional.of(found);
        } else {
            remarks.add(found.why());
        }
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
        return new Verification(entries, head, fault, unknown, said, false);
    }

    /** The last entry up to which all is well. */
    public Head head() {
        return head;
    }

    /**
     * What is wrong with an entry by itself, wherever it stands: its hash, its text, or what is drawn out of the text.
     */
    public static Optional<Fault> within(StoredEntry stored) {
        byte[] body = stored.body().getBytes(UTF_8);
        return hashedOtherwise(stored, body).or(() -> {
            try {
                return differing(stored, EntryText.read(stored.seq(), body));
            } catch (UnreadableEntry e) {
                return unreadable(stored, e);
            }
        });
    }

    private static Optional<Fault> hashedOtherwise(StoredEntry stored, byte[] body) {
        return Chain.hash(stored.previous(), body).equals(stored.hash())
                ? Optional.empty()
                : at(
                        stored,
                        "Entry %d is not as it was written: its text does not give its hash.".formatted(stored.seq()));
    }

    private static Optional<Fault> unreadable(StoredEntry stored, UnreadableEntry why) {
        return at(stored, "The text of entry %d cannot be read: %s.".formatted(stored.seq(), why.getMessage()));
    }

    private Optional<Fault> outOfPlaceInItsRun(StoredEntry entry, Optional<Before> before) {
        RunChain chain = runs.computeIfAbsent(
                entry.run(), run -> new RunChain(runsBefore.getOrDefault(run, RunHead.OF_NOTHING)));
        chain.next(entry, before);
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

    private static Optional<Fault> differing(StoredEntry stored, Entry entry) {
        return differingColumn(stored, entry)
                .flatMap(column -> at(
                        stored, "The \"%s\" of entry %d is not what its text says.".formatted(column, stored.seq())));
    }

    private static Optional<String> differingColumn(StoredEntry stored, Entry entry) {
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
