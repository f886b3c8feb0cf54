package org.tenthwise.app.session;

import java.util.Optional;
import org.tenthwise.app.store.ChainCheck;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.RunChain;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.Seals;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.app.store.Verification.Fault;
import org.tenthwise.model.words.Message;

/**
 * Whether the entries of a run are as they were written, and whether a station sealed it when it was closed.
 *
 * @param fault the first thing that is wrong with them or with a seal among them
 * @param isUnsealed whether it is closed and its last entry is no seal
 */
public record RunProof(Optional<Message> fault, boolean isUnsealed) {

    /** Looks at every entry of a run, as it is stored. */
    static RunProof of(KeptEntries kept, String run) {
        RunChain chain = new RunChain();
        Seals.Tally seals = new Seals.Tally();
        for (StoredEntry entry : kept.stored(run)) {
            RunHead before = chain.head();
            Optional<Fault> fault = ChainCheck.within(entry);
            if (fault.isEmpty()) {
                chain.next(entry);
                fault = chain.fault().or(() -> seals.next(entry, before));
            }
            if (fault.isPresent()) {
                return new RunProof(fault.map(Fault::why), false);
            }
        }
        return new RunProof(Optional.empty(), !seals.seals().unsigned().isEmpty());
    }
}
