package org.tenthwise.model.firstarticle;

import java.util.List;
import org.tenthwise.model.compare.ChangeKind;
import org.tenthwise.model.compare.PlanComparison;
import org.tenthwise.model.plan.DrawingInForce;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.words.Refused;

/**
 * Whether runs can stand in one report. They are of one part number, one revision and one drawing with the changes in
 * force, and ask the same of each characteristic; the plan may have been issued anew between them for anything else.
 */
final class JoinedPlans {

    private JoinedPlans() {}

    /** @throws Refused if a run cannot stand beside the first, or in any report */
    static void check(PartId part, List<Sheet> runs) {
        for (Sheet sheet : runs) {
            String id = sheet.run().id();
            PartId is = sheet.plan().part();
            if (!is.number().equals(part.number())) {
                throw new Refused("model.report.other-part", id, is.number(), part.number());
            }
            if (!is.revision().equals(part.revision())) {
                throw new Refused("model.report.other-revision", id, is.revision(), part.revision());
            }
            if (sheet.putAway().isPresent()) {
                throw new Refused("model.report.put-away", id);
            }
            if (sheet.holdsWhatIsNotKnown()) {
                throw new Refused("model.report.not-known", id);
            }
            sameDrawing(runs.get(0), sheet);
        }
    }

    private static void sameDrawing(Sheet first, Sheet other) {
        DrawingInForce drawing = first.plan().drawing();
        DrawingInForce beside = other.plan().drawing();
        if (!drawing.number().equals(beside.number())
                || !drawing.revision().equals(beside.revision())
                || !drawing.changes().equals(beside.changes())) {
            throw new Refused(
                    "model.report.other-drawing", other.run().id(), first.run().id());
        }
        if (!first.plan().source().equals(other.plan().source())) {
            sameRequirements(first, other);
        }
    }

    private static void sameRequirements(Sheet first, Sheet other) {
        Plan before = first.plan();
        PlanComparison.of(before, other.plan()).changes().stream()
                .filter(change -> change.before().filter(Step::isOfDrawing).isPresent()
                        || change.after().filter(Step::isOfDrawing).isPresent())
                .filter(change -> change.isNew()
                        || change.isGone()
                        || change.differences().stream().anyMatch(one -> one.kind() == ChangeKind.REQUIREMENT))
                .findFirst()
                .ifPresent(change -> {
                    throw new Refused(
                            "model.report.asks-otherwise",
                            other.run().id(),
                            change.balloon()
                                    .map(Object::toString)
                                    .orElse(change.step().name()),
                            first.run().id());
                });
    }
}
