package org.tenthwise.model.run;

import java.util.List;

/**
 * What happens to a store with runs that were made in another: they came in, or were lost. It happens to no run of this
 * store, so it stands among the entries of the shop; the entries that came in stand apart, as their own store wrote
 * them, and these events say what they must be.
 */
public sealed interface ImportEvent extends Event permits ImportEvent.Imported, ImportEvent.Lost {

    /** Where the runs were made. */
    Provenance origin();

    /**
     * A store elsewhere, as its station signs for it.
     *
     * @param key fingerprint of the public key of the station, 64 hex digits
     * @param store hash of the first entry of the ledger there, 64 hex digits
     * @param sign what tells its runs from those of others here: the first digits of the key, with a number where
     *     another origin here has the same
     */
    record Provenance(String key, String store, String sign) {

        /** Whether it is the same store, under the same key. */
        public boolean is(String otherKey, String otherStore) {
            return key.equals(otherKey) && store.equals(otherStore);
        }
    }

    /**
     * A run, as far as it is here from then on.
     *
     * @param run as its own store calls it
     * @param entries how many there are
     * @param last place of the last one in the ledger there
     * @param hash of the head of the run, over all of them
     */
    record OfRun(String run, long entries, long last, String hash) {}

    /**
     * Entries of another store came in.
     *
     * @param bundle SHA-256 of the file they came in, 64 hex digits
     * @param signerKnown whether whoever took them in named the key as one that is trusted
     * @param runs those that are new or longer since
     */
    record Imported(Provenance origin, String bundle, boolean signerKnown, List<OfRun> runs) implements ImportEvent {

        public Imported {
            runs = List.copyOf(runs);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.imported(this);
        }
    }

    /**
     * Runs that came in are here no more: the file was damaged where they stood, and the rest was taken out of it.
     *
     * @param runs as their own store calls them
     */
    record Lost(Provenance origin, List<String> runs) implements ImportEvent {

        public Lost {
            runs = List.copyOf(runs);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.importLost(this);
        }
    }
}
