package org.tenthwise.app.store;

import java.util.List;
import java.util.Optional;

/**
 * What came out of a damaged store.
 *
 * @param head the last entry that went into the new store
 * @param fault the first thing that is not as it was written; absent if every entry is
 * @param runs in the order their first entries stand in the damaged store
 */
public record Salvage(Head head, Optional<Verification.Fault> fault, List<OfRun> runs) {

    public Salvage {
        runs = List.copyOf(runs);
    }

    /**
     * @param kept entries that went into the new store
     * @param behind entries behind the fault that are as they were written and did not
     * @param provesItself whether by the chain of the run none of all these is missing
     */
    public record OfRun(String run, long kept, long behind, boolean provesItself) {}
}
