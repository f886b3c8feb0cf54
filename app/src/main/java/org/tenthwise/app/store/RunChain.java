package org.tenthwise.app.store;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.util.Optional;
import org.tenthwise.app.store.Verification.Fault;
import org.tenthwise.model.words.Message;

/**
 * Walks the entries of one run, from its first, and tells whether one is missing, without the entries of other runs
 * that stand between them in the ledger.
 *
 * <p>R<sub>0</sub> is a start value, R<sub>i</sub> = SHA-256(R<sub>i-1</sub>, place in the ledger and hash of entry i
 * of the run). Each entry carries its place i and R<sub>i-1</sub>, see {@link Before}. Entries of releases that did not
 * tie runs together carry nothing; the first that does speaks for all before it. Whatever a run begins with, nothing
 * that is not tied may follow.
 *
 * <p>An entry by itself is looked at by {@link ChainCheck#look}.
 */
public final class RunChain {

    /** What stands for the entries before the first: the hash of the words below. */
    public static final String START = Chain.hash("", "Tenthwise run, first page".getBytes(US_ASCII));

    private RunHead head;
    private boolean tied;
    private Optional<Fault> fault = Optional.empty();

    /**
     * @param before over the entries before, 64 hex digits
     * @param seq place in the ledger of the entry that comes next: what strikes an entry out names it by that
     * @param entry its hash
     */
    static String hash(String before, long seq, String entry) {
        return Chain.hash(before, (seq + " " + entry).getBytes(US_ASCII));
    }

    public RunChain() {
        this(RunHead.OF_NOTHING);
    }

    /** @param head up to which none is missing; goes on behind it */
    RunChain(RunHead head) {
        this.head = head;
        this.tied = head.place() > 0;
    }

    /** Looks at the next entry. */
    public void next(StoredEntry entry) {
        next(entry, Before.in(entry.body()));
    }

    /** Looks at the next entry, by itself as well: one that is not as it was written is a fault too. */
    public void next(ChainCheck.Looked looked) {
        if (fault.isEmpty()) {
            fault = looked.fault();
        }
        if (fault.isEmpty()) {
            next(looked.stored(), looked.said().orElseThrow().before());
        }
    }

    /** @param before what its text says came before it in its run */
    void next(StoredEntry entry, Optional<Before> before) {
        if (fault.isPresent()) {
            return;
        }
        if (before.isPresent() || tied) {
            fault = before.isPresent()
                    ? differing(entry, before.get())
                    : at(entry, Message.of("fault.run-not-tied", entry.seq(), entry.run()));
            tied = true;
        }
        if (fault.isEmpty()) {
            head = head.and(entry);
        }
    }

    /** The last entry up to which none is missing. */
    public RunHead head() {
        return head;
    }

    /** The first entry that does not follow on what is there before it. */
    public Optional<Fault> fault() {
        return fault;
    }

    /** Whether the last entry vouches for those before it. Nothing vouches for itself: a run can still be cut short. */
    public boolean tied() {
        return tied;
    }

    private Optional<Fault> differing(StoredEntry entry, Before before) {
        if (before.place() != head.place() + 1) {
            return at(entry, Message.of("fault.run-place", entry.seq(), before.place(), entry.run(), head.place()));
        }
        return before.hash().equals(head.hash())
                ? Optional.empty()
                : at(entry, Message.of("fault.run-before", entry.seq(), entry.run()));
    }

    private static Optional<Fault> at(StoredEntry entry, Message why) {
        return Optional.of(new Fault(Optional.of(entry.seq()), why));
    }
}
