package org.tenthwise.app.session;

import java.util.Optional;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Sheet;

/** What is said against whatever is taken in a run, or at a step of it. */
final class Shut {

    private Shut() {}

    /** The run has entries of a newer release, is closed, or is put away. */
    static Optional<Objection> run(Sheet sheet) {
        return newer(sheet)
                .or(() -> Objection.where(sheet.run().closed().isPresent(), Objection.Kind.CLOSED))
                .or(() -> away(sheet));
    }

    /**
     * The run is shut, the step is not in it, or a hold point keeps it so. A closed run is not shut to what is proven
     * elsewhere: those papers come when the work at the machine is long signed for.
     */
    static Optional<Objection> step(Sheet sheet, Step step) {
        return step.check().isInOrder()
                ? run(sheet)
                        .or(() -> leftOut(sheet, step))
                        .or(() -> Objection.where(sheet.line(step.number()).held(), Objection.Kind.HELD))
                : newer(sheet).or(() -> away(sheet)).or(() -> leftOut(sheet, step));
    }

    /** The same for an entry that is to be struck out. */
    static Optional<Objection> entry(Sheet sheet, long entry) {
        boolean elsewhere = sheet.run()
                .entry(entry)
                .flatMap(sheet.run()::step)
                .map(sheet.plan()::step)
                .filter(step -> !step.check().isInOrder())
                .isPresent();
        return elsewhere ? newer(sheet).or(() -> away(sheet)) : run(sheet);
    }

    private static Optional<Objection> leftOut(Sheet sheet, Step step) {
        return Objection.where(!sheet.line(step.number()).asked(), Objection.Kind.NOT_IN_THIS_RUN);
    }

    private static Optional<Objection> newer(Sheet sheet) {
        return Objection.where(!sheet.run().unknown().isEmpty(), Objection.Kind.NEWER);
    }

    private static Optional<Objection> away(Sheet sheet) {
        return Objection.where(sheet.putAway().isPresent(), Objection.Kind.PUT_AWAY);
    }
}
