package org.tenthwise.app.store;

import java.util.List;
import org.tenthwise.app.history.RunName;
import org.tenthwise.model.run.ImportEvent;
import org.tenthwise.model.run.ImportEvent.Provenance;

/**
 * What runs of another store mean to this one.
 *
 * @param origin where they were made, with the sign they go by here
 * @param becomesKnown whether their signer is trusted from now on, and was not known here
 */
public record Arrivals(Provenance origin, boolean becomesKnown, List<OfRun> runs) {

    public Arrivals {
        runs = List.copyOf(runs);
    }

    /** What is done with a run. */
    public enum What {
        /** Nothing of it was here. */
        NEW,
        /** Some of it was here, and it went on since. */
        LONGER,
        /** All of it was here. */
        SAME,
        /** It is neither closed nor put away where it was made, and stays out. */
        OPEN
    }

    /**
     * One run.
     *
     * @param run as its own store calls it
     * @param had how many of its entries were here
     * @param added those that were not, in order
     * @param head of the run with them
     */
    public record OfRun(String run, What what, long had, List<StoredEntry> added, RunHead head) {

        public OfRun {
            added = List.copyOf(added);
        }

        ImportEvent.OfRun kept() {
            return new ImportEvent.OfRun(run, head.place(), head.seq(), head.hash());
        }
    }

    /** The name a run goes by here. */
    public String id(OfRun run) {
        return RunName.imported(run.run(), origin.sign());
    }

    /** Those of which something comes in. */
    public List<OfRun> coming() {
        return runs.stream().filter(run -> !run.added().isEmpty()).toList();
    }

    /** Whether anything is added here. */
    public boolean addAnything() {
        return becomesKnown || !coming().isEmpty();
    }

    /** What the ledger says of it. */
    public ImportEvent.Imported event(Incoming incoming) {
        return new ImportEvent.Imported(
                origin,
                incoming.bundle(),
                incoming.signerKnown(),
                coming().stream().map(OfRun::kept).toList());
    }
}
