package org.tenthwise.app.store;

import java.util.List;

/**
 * Runs of another store as they arrive, not looked at yet.
 *
 * @param bundle SHA-256 of the file they came in, 64 hex digits
 * @param key fingerprint of the public key that signs for the file, 64 hex digits
 * @param store hash of the first entry of the ledger they are from
 * @param signerKnown whether whoever takes them in named the key as one that is trusted
 */
public record Incoming(String bundle, String key, String store, boolean signerKnown, List<OfRun> runs) {

    public Incoming {
        runs = List.copyOf(runs);
    }

    /**
     * One of them.
     *
     * @param run as its own store calls it
     * @param entries all of them up to some moment, as that store has them, in order
     */
    public record OfRun(String run, List<StoredEntry> entries) {

        public OfRun {
            entries = List.copyOf(entries);
        }
    }
}
