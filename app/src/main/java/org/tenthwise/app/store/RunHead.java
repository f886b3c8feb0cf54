package org.tenthwise.app.store;

/**
 * The last entry of a run: who knows it can tell whether an entry of the run was changed, left out or cut off since.
 *
 * @param place how many entries the run has; 0 where there is none
 * @param seq place of the last one in the ledger; 0 where there is none
 * @param hash over the places in the ledger and the hashes of all of them, {@link RunChain#START} where there is none
 */
public record RunHead(long place, long seq, String hash) {

    public static final RunHead OF_NOTHING = new RunHead(0, 0, RunChain.START);

    /** The head once an entry is added. */
    public RunHead and(StoredEntry entry) {
        return new RunHead(place + 1, entry.seq(), RunChain.hash(hash, entry.seq(), entry.hash()));
    }
}
