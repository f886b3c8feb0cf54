package org.tenthwise.app.matters;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.tenthwise.app.history.MatterKind;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.MatterSettled;
import org.tenthwise.model.words.Refused;

/** Where somebody signs for what becomes of an open matter. Nothing in the run it is of is changed by that. */
public final class MatterDesk {

    private final Clock clock;

    public MatterDesk(Clock clock) {
        this.clock = clock;
    }

    /**
     * @param seen the matter as it was looked at
     * @param document number of the document that says so; a nonconformance needs one
     * @throws Refused if it is not there any more, or another by now; if it is one that is done in its run; if a
     *     nonconformance has no document
     */
    public void settle(Ledger ledger, OpenMatter seen, String signedBy, String words, String document)
            throws CouldNotSave {
        OpenMatters matters = new OpenMatters(ledger);
        OpenMatter now = matters.all(Optional.empty(), Optional.empty()).stream()
                .filter(matter -> matter.isOpen()
                        && matter.matter().equals(seen.matter())
                        && matter.run().map(RunFacts::last).equals(seen.run().map(RunFacts::last))
                        && matter.run().map(RunFacts::id).equals(seen.run().map(RunFacts::id)))
                .findFirst()
                .orElseThrow(() -> new Refused("matters.refused.changed"));
        if (!now.canBeSettled()) {
            throw new Refused("matters.refused.in-its-run");
        }
        if (now.matter().kind() == MatterKind.NONCONFORMANCE && document.isBlank()) {
            throw new Refused("matters.refused.no-document");
        }
        ledger.append(
                Entry.SHOP,
                OffsetDateTime.now(clock),
                signedBy.strip(),
                new MatterSettled(matters.named(now), signedBy.strip(), words.strip(), document.strip()));
    }
}
