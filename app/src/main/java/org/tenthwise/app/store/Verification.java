package org.tenthwise.app.store;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.words.Message;

/**
 * What a walk over a ledger found.
 *
 * @param entries how many entries there are, bad ones too
 * @param head the last entry up to which all is well
 * @param fault the first thing that is not as it was written; absent if the chain is whole
 * @param unknown entries of kinds this release does not know, by kind, in order; they are as they were written
 * @param remarks sentences about what is no fault and should be looked at
 * @param seals which stations signed which runs
 * @param mayLackItsLast whether the last entries may have stood in a file beside that is not there any more
 */
public record Verification(
        long entries,
        Head head,
        Optional<Fault> fault,
        Map<String, List<Long>> unknown,
        List<Message> remarks,
        Seals seals,
        boolean mayLackItsLast) {

    private static final int MOST_NAMED = 10;

    /**
     * @param seq the first bad entry; absent if the file is damaged where no entry can be named
     * @param why in a sentence
     */
    public record Fault(Optional<Long> seq, Message why) {}

    /** Without unknown kinds, remarks and seals. */
    public Verification(long entries, Head head, Optional<Fault> fault) {
        this(entries, head, fault, Map.of(), List.of(), Seals.NONE, false);
    }

    /** The same with a fault found by other means; it is the fault where there is none. */
    public Verification and(Optional<Fault> other) {
        return fault.isPresent() || other.isEmpty()
                ? this
                : new Verification(entries, head, other, unknown, remarks, seals, mayLackItsLast);
    }

    /** The same of a store whose last entries may have stood in a file beside. */
    public Verification perhapsWithoutItsLast() {
        return new Verification(entries, head, fault, unknown, remarks, seals, true);
    }

    public boolean whole() {
        return fault.isEmpty();
    }

    /** Entries and kinds a newer release made; absent if there are none. */
    public Optional<Message> madeByNewer() {
        if (unknown.isEmpty()) {
            return Optional.empty();
        }
        List<Long> all =
                unknown.values().stream().flatMap(Collection::stream).sorted().toList();
        List<Long> named = all.stream().limit(MOST_NAMED).toList();
        return Optional.of(Message.of("unknown-kinds")
                .with("n", all.size())
                .with("kinds", List.copyOf(unknown.keySet()))
                .with("places", named)
                .with("more", all.size() - named.size()));
    }
}
