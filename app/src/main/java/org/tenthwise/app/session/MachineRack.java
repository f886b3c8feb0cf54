package org.tenthwise.app.session;

import java.util.Optional;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;

/** The machines whose register the shop has been asked, from the ledger. What was told last counts. */
public final class MachineRack {

    private final KeptEntries kept;

    public MachineRack(KeptEntries kept) {
        this.kept = kept;
    }

    /** Absent as well for a machine without a name: the next run without one may be on another. */
    public Optional<Event.MachineKnown> find(String machine) {
        return machine.isEmpty()
                ? Optional.empty()
                : kept.entries(Entry.SHOP).stream()
                        .map(Entry::event)
                        .flatMap(event -> event.as(Event.MachineKnown.class).stream())
                        .filter(known -> known.machine().equals(machine))
                        .reduce((earlier, later) -> later);
    }
}
