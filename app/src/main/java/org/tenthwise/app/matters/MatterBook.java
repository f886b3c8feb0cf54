package org.tenthwise.app.matters;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.history.MatterKind;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.MatterSettled;
import org.tenthwise.model.words.Refused;

/**
 * Where somebody signs for what becomes of an open matter. Nothing in the run it is of is changed by that. Used from
 * the thread of the ledger.
 */
public final class MatterBook {

    private final Ledger ledger;
    private final Clock clock;

    public MatterBook(Ledger ledger, Clock clock) {
        this.ledger = ledger;
        this.clock = clock;
    }

    /** What is open and nobody has signed for. */
    public List<OpenMatter> open() {
        return new OpenMatters(ledger)
                .all(Optional.empty(), Optional.empty()).stream()
                        .filter(OpenMatter::isOpen)
                        .toList();
    }

    /** How many these are. */
    public int countOpen() {
        return new OpenMatters(ledger).countOpen();
    }

    /**
     * @param seen the matter as it was looked at
     * @param document number of the document that says so; a nonconformance needs one
     * @throws Refused if it is not there any more, or another by now; if it is one that is done in its run; if a
     *     nonconformance has no document
     */
    public void settle(OpenMatter seen, String signedBy, String words, String document) throws CouldNotSave {
        OpenMatter now = open().stream()
                .filter(matter -> matter.matter().equals(seen.matter())
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
                new MatterSettled(
                        new OpenMatters(ledger).named(now), signedBy.strip(), words.strip(), document.strip()));
    }
}
