package org.tenthwise.app.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.model.compute.cutting.EvenCut;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.ShopEvent;

/** The machine of a run: how its register counts and what is usually aimed at on it. */
final class MachineAtHand {

    private final RunBook book;

    MachineAtHand(RunBook book) {
        this.book = book;
    }

    /**
     * How the register of the machine counts, once a cut is offered that goes into it, and nobody said; not where it
     * was signed for as it is.
     */
    static Optional<Prompt> asked(Line line, Run run) {
        boolean offered = line.finding()
                .proposal()
                .filter(proposal -> proposal.cut() instanceof EvenCut.Offered)
                .isPresent();
        return line.step().check().isTurned()
                        && offered
                        && line.disposed().isEmpty()
                        && run.machineKnown().isEmpty()
                ? Optional.of(new Prompt.WhichRegister(run.begun().machine()))
                : Optional.empty();
    }

    /**
     * Keeps what is said of the machine in the run, and for the shop; what both know already is kept once. A register
     * counts one way, in the other open runs on the machine too.
     */
    void tell(Register register, Aim.ByLimits usual) throws CouldNotSave {
        ShopEvent.MachineKnown known =
                new ShopEvent.MachineKnown(book.run().begun().machine(), register, usual);
        List<NewEntry> added = new ArrayList<>();
        if (!book.run().machineKnown().equals(Optional.of(known))) {
            added.add(new NewEntry(book.run().id(), book.now(), book.by(), known));
        }
        added.addAll(new MachineRack(book.kept()).telling(known, book.run().id(), book.now(), book.by()));
        if (!added.isEmpty()) {
            book.add(added);
        }
    }

    /**
     * Takes up a run that was put away. While it lay there its register was put right nowhere: where the shop knows by
     * now that it counts the other way round, that counts in it too, or its next cut is twice what it should be.
     */
    void takeUp() throws CouldNotSave {
        Run run = book.run();
        List<Event> events = new ArrayList<>(List.of(new Event.TakenUp()));
        new MachineRack(book.kept())
                .find(run.begun().machine())
                .filter(known -> run.register()
                        .filter(counts -> counts != known.register())
                        .isPresent())
                .map(known -> new ShopEvent.MachineKnown(
                        known.machine(), known.register(), run.usualAim().orElse(known.usual())))
                .ifPresent(events::add);
        book.add(book.happening(events));
    }
}
