package org.tenthwise.app.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.model.compute.cutting.EvenCut;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;

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
     * counts one way: where another open run on the machine has it the other way round, that is put right there too, or
     * its next cut is twice what it should be.
     */
    void tell(Register register, Aim.ByLimits usual) throws CouldNotSave {
        Event.MachineKnown known = new Event.MachineKnown(book.run().begun().machine(), register, usual);
        List<NewEntry> added = new ArrayList<>();
        if (!book.run().machineKnown().equals(Optional.of(known))) {
            added.add(new NewEntry(book.run().id(), book.now(), book.by(), known));
        }
        if (!known.machine().isEmpty()
                && !new MachineRack(book.kept()).find(known.machine()).equals(Optional.of(known))) {
            added.add(new NewEntry(Entry.SHOP, book.now(), book.by(), known));
        }
        otherRuns(known)
                .forEach(run -> added.add(new NewEntry(
                        run.id(),
                        book.now(),
                        book.by(),
                        new Event.MachineKnown(
                                known.machine(), register, run.usualAim().orElse(usual)))));
        if (!added.isEmpty()) {
            book.add(added);
        }
    }

    /** The open ones on that machine, which need a name to be known by, that have its register the other way round. */
    private Stream<Run> otherRuns(Event.MachineKnown known) {
        return known.machine().isEmpty()
                ? Stream.empty()
                : book.kept().history().openOn(known.machine()).stream()
                        .map(RunFacts::id)
                        .filter(id -> !id.equals(book.run().id()))
                        .map(id -> new Run(book.kept().entries(id)))
                        .filter(run -> run.register()
                                .filter(counts -> counts != known.register())
                                .isPresent());
    }
}
