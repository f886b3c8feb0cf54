package org.tenthwise.app.store;

import java.util.Optional;

/**
 * What a walk over a ledger found.
 *
 * @param entries how many entries there are, bad ones too
 * @param head    the last entry up to which all is well
 * @param fault   the first thing that is not as it was written; absent if the chain is whole
 */
public record Verification(long entries, Head head, Optional<Fault> fault) {

    /**
     * @param seq the first bad entry; absent if the file is damaged where no entry can be named
     * @param why a sentence
     */
    public record Fault(Optional<Long> seq, String why) {
    }

    public boolean whole() {
        return fault.isEmpty();
    }
}
