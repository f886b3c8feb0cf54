package org.tenthwise.app.session;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.run.Disposition;

/** What can become of a step that did not pass: there is a product to concede or to scrap only where the drawing asks for it. */
public final class Dispositions {

    private Dispositions() {
    }

    static Optional<Objection> against(StepClass stepClass, Disposition disposition) {
        return offeredTo(stepClass).contains(disposition) ? Optional.empty()
                : Optional.of(Objection.of(Objection.Kind.NOT_FOR_THIS_CLASS));
    }

    /** In the order they are offered. What is not of the drawing is put right and checked again without a signature. */
    public static List<Disposition> offeredTo(StepClass stepClass) {
        return stepClass == StepClass.DRAWING ? List.of(Disposition.REWORK, Disposition.USE_AS_IS, Disposition.SCRAP)
                : List.of(Disposition.CARRY_ON);
    }
}
