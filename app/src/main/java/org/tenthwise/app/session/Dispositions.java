package org.tenthwise.app.session;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.StepEvent;

/**
 * What can become of a step that did not pass: there is a product to concede or to scrap only where the drawing asks
 * for it.
 */
public final class Dispositions {

    private Dispositions() {}

    /** @param number of the document behind it; a blank one is none */
    static StepEvent.DispositionSigned signed(
            Step step, Disposition disposition, String reason, String signedBy, String number) {
        return new StepEvent.DispositionSigned(
                step.number(),
                disposition,
                reason.strip(),
                signedBy.strip(),
                Optional.of(number.strip()).filter(given -> !given.isEmpty()));
    }

    /** Against signing {@code disposed} for a finding as it stands. */
    static Optional<Objection> against(Finding finding, StepEvent.DispositionSigned disposed) {
        boolean numbered =
                disposed.document().isPresent() || !disposed.disposition().departsFromTheDrawing();
        if (disposed.reason().isEmpty() || disposed.signedBy().isEmpty() || !numbered) {
            return Optional.of(Objection.of(Objection.Kind.BLANK));
        }
        return Signing.inName(disposed.signedBy())
                .or(() -> disposed.document().flatMap(Signing::inName))
                .or(() -> EntryCheck.disposing(finding, disposed.disposition()))
                .or(() -> against(finding.step().stepClass(), disposed.disposition()));
    }

    private static Optional<Objection> against(StepClass stepClass, Disposition disposition) {
        return offeredTo(stepClass).contains(disposition)
                ? Optional.empty()
                : Optional.of(Objection.of(Objection.Kind.NOT_FOR_THIS_CLASS));
    }

    /** In the order they are offered. What is not of the drawing is put right and checked again without a signature. */
    public static List<Disposition> offeredTo(StepClass stepClass) {
        return stepClass == StepClass.DRAWING
                ? List.of(Disposition.REWORK, Disposition.REPAIR, Disposition.USE_AS_IS, Disposition.SCRAP)
                : List.of(Disposition.CARRY_ON);
    }
}
