package org.tenthwise.app.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.TreeMap;
import org.tenthwise.app.store.Verification.Fault;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.words.Message;

/** Walks a ledger, entry by entry in order, and keeps the first thing that is not as it was written. */
public final class ChainCheck {

    private long entries;
    private Head head;
    private Optional<Fault> fault = Optional.empty();
    private final Map<String, RunHead> runsBefore;
    private final Map<String, RunChain> runs = new LinkedHashMap<>();
    private final Map<String, List<Long>> unknown = new TreeMap<>();
    private final List<Message> remarks = new ArrayList<>();
    private final Seals.Tally seals = new Seals.Tally();
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
     * An entry looked at by itself, wherever it stands: its hash, its text, and what is drawn out of the text.
     *
     * @param said absent where the text cannot be read
     * @param fault what is wrong with it
     */
    public record Looked(StoredEntry stored, Optional<EntryText.Said> said, Optional<Fault> fault) {

        /** @throws NoSuchElementException if its text cannot be read */
        public Entry entry() {
            return said.orElseThrow().entry();
        }
    }

    /** @param body its text as stored, which need not be text any more */
    public static Looked look(StoredEntry stored, byte[] body) {
        if (!Chain.hash(stored.previous(), body).equals(stored.hash())) {
            return new Looked(stored, Optional.empty(), at(stored, Message.of("fault.hash", stored.seq())));
        }
        try {
            EntryText.Said said = EntryText.said(stored.seq(), body);
            return new Looked(stored, Optional.of(said), differing(stored, said.entry()));
        } catch (UnreadableEntry e) {
            return new Looked(stored, Optional.empty(), at(stored, Message.of("fault.text", stored.seq(), e.why())));
        }
    }

    /** What is wrong with an entry by itself. */
    public static Optional<Fault> within(StoredEntry stored) {
        return look(stored, stored.body().getBytes(UTF_8)).fault();
    }

    /** Takes the next entry. */
    public void next(Looked next) {
        entries++;
        if (fault.isEmpty()) {
            fault = outOfPlace(next.stored()).or(next::fault).or(() -> outOfPlaceInItsRun(next));
            if (fault.isEmpty()) {
                head = next.stored().asHead();
            }
        }
    }

    /** Keeps that the file is damaged behind the last entry looked at. */
    public void cannotBeReadOn() {
        broken(new Fault(Optional.of(head.seq() + 1), Message.of("fault.damaged-there", head.seq() + 1)));
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
                        Message.of("fault.run-not-tied", chain.head().seq(), run)));
            }
        });
    }

    public Verification result() {
        List<Message> said = new ArrayList<>(remarks);
        time.remark().ifPresent(said::add);
        return new Verification(entries, head, fault, unknown, said, seals.seals(), false);
    }

    /** The last entry up to which all is well. */
    public Head head() {
        return head;
    }

    private Optional<Fault> outOfPlaceInItsRun(Looked next) {
        StoredEntry stored = next.stored();
        EntryText.Said said = next.said().orElseThrow();
        RunChain chain = runs.computeIfAbsent(
                stored.run(), run -> new RunChain(runsBefore.getOrDefault(run, RunHead.OF_NOTHING)));
        RunHead before = chain.head();
        chain.next(stored, said.before());
        if (chain.fault().isPresent()) {
            return chain.fault();
        }
        Optional<Fault> seal = Seal.fault(said.entry(), before);
        if (seal.isEmpty()) {
            seals.next(said.entry());
            time.next(said.entry());
            if (said.entry().event().as(Event.Unknown.class).isPresent()) {
                unknown.computeIfAbsent(stored.kind(), kind -> new ArrayList<>())
                        .add(stored.seq());
            }
        }
        return seal;
    }

    private Optional<Fault> outOfPlace(StoredEntry entry) {
        long due = head.seq() + 1;
        if (entry.seq() > due) {
            return Optional.of(new Fault(
                    Optional.of(due),
                    head.seq() == 0
                            ? Message.of("fault.first-missing", entry.seq())
                            : Message.of("fault.missing", due, head.seq(), entry.seq())));
        }
        if (entry.seq() < due) {
            return at(entry, Message.of("fault.out-of-place", entry.seq(), due));
        }
        if (!entry.previous().equals(head.hash())) {
            return at(
                    entry,
                    head.seq() == 0
                            ? Message.of("fault.not-the-first")
                            : Message.of("fault.not-following", entry.seq(), head.seq()));
        }
        return Optional.empty();
    }

    private static Optional<Fault> differing(StoredEntry stored, Entry entry) {
        return differingColumn(stored, entry)
                .flatMap(column -> at(stored, Message.of("fault.column", column, stored.seq())));
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

    private static Optional<Fault> at(StoredEntry entry, Message why) {
        return Optional.of(new Fault(Optional.of(entry.seq()), why));
    }
}
