package org.tenthwise.app.session;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.ShopEvent;

/** The machines whose register the shop has been asked, from the ledger. What was told last counts. */
public final class MachineRack {

    private final KeptEntries kept;

    public MachineRack(KeptEntries kept) {
        this.kept = kept;
    }

    /** Absent as well for a machine without a name: the next run without one may be on another. */
    public Optional<ShopEvent.MachineKnown> find(String machine) {
        return machine.isEmpty()
                ? Optional.empty()
                : kept.entries(Entry.SHOP).stream()
                        .map(Entry::event)
                        .flatMap(event -> event.as(ShopEvent.MachineKnown.class).stream())
                        .filter(known -> known.machine().equals(machine))
                        .reduce((earlier, later) -> later);
    }

    /**
     * What is to be kept when a machine is told of: for the shop, where that is new to it, and in the other open runs
     * on it that have its register the other way round. A register counts one way, or their next cut is twice what it
     * should be. A machine without a name is known to nobody.
     *
     * @param here the run it is told in, if in one
     */
    List<NewEntry> telling(ShopEvent.MachineKnown known, String here, OffsetDateTime at, String by) {
        List<NewEntry> added = new ArrayList<>();
        if (known.machine().isEmpty()) {
            return added;
        }
        if (!find(known.machine()).equals(Optional.of(known))) {
            added.add(new NewEntry(Entry.SHOP, at, by, known));
        }
        otherRuns(known, here)
                .forEach(run -> added.add(new NewEntry(
                        run.id(),
                        at,
                        by,
                        new ShopEvent.MachineKnown(
                                known.machine(),
                                known.register(),
                                run.usualAim().orElse(known.usual())))));
        return added;
    }

    private Stream<Run> otherRuns(ShopEvent.MachineKnown known, String here) {
        return kept.history().openOn(known.machine()).stream()
                .map(RunFacts::id)
                .filter(id -> !id.equals(here))
                .map(id -> new Run(kept.entries(id)))
                .filter(run -> run.register()
                        .filter(counts -> counts != known.register())
                        .isPresent());
    }
}
