package org.tenthwise.app.matters;

import java.util.Optional;
import org.tenthwise.app.history.Matter;
import org.tenthwise.app.history.MatterKind;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.model.run.Entry;

/**
 * Something that is open in a run, or of a gauge of the shop.
 *
 * @param run what it is open in; absent for what is of a gauge
 * @param settled the entry by which somebody signed for it, while what it rests on stands as it stood then
 */
public record OpenMatter(Optional<RunFacts> run, Matter matter, Optional<Entry> settled) {

    /** Whether nobody has signed for it as it stands. */
    public boolean isOpen() {
        return settled.isEmpty();
    }

    /** Whether somebody can sign for it here; what is in an open run, and a document to come, is done in the run. */
    public boolean canBeSettled() {
        return isOpen()
                && !matter.kind().isDoneInItsRun()
                && run.map(of -> !of.open()).orElse(true);
    }

    /**
     * Number of the check, or the mark of the gauge, both where a check was read with it, and with its day where that
     * is past; empty for what is of the whole run.
     */
    String about() {
        if (run.isPresent() && matter.kind() == MatterKind.GAUGE_IN_DOUBT) {
            return matter.check() + " " + matter.about();
        }
        if (matter.kind() == MatterKind.GAUGE_PAST_DUE) {
            return matter.about() + " " + matter.number();
        }
        return run.isEmpty() ? matter.about() : matter.check() == 0 ? "" : String.valueOf(matter.check());
    }
}
