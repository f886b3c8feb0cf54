package org.tenthwise.app.session;

import java.util.Optional;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Sheet;

/** What is said against whatever is taken in a run, or at a step of it. */
final class Shut {

    private Shut() {}

    /** The run has entries of a newer release, is closed, or is put away. */
    static Optional<Objection> run(Sheet sheet) {
        return Objection.where(!sheet.run().unknown().isEmpty(), Objection.Kind.NEWER)
                .or(() -> Objection.where(sheet.run().closed().isPresent(), Objection.Kind.CLOSED))
                .or(() -> Objection.where(sheet.putAway().isPresent(), Objection.Kind.PUT_AWAY));
    }

    /** The run is shut, or a hold point keeps the step so. */
    static Optional<Objection> step(Sheet sheet, Step step) {
        return run(sheet).or(() -> Objection.where(sheet.line(step.number()).held(), Objection.Kind.HELD));
    }
}
