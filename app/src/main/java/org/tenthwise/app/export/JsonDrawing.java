package org.tenthwise.app.export;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.DrawingInForce;
import org.tenthwise.model.plan.Instances;
import org.tenthwise.model.plan.OnDrawing;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.record.AccountLine;
import org.tenthwise.model.record.DrawingAccount;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Word;

/** What stands on the drawing, and the account of it, as JSON; nothing where the plan says nothing of it. */
final class JsonDrawing {

    private JsonDrawing() {}

    /** Number and revision of the drawing, apart from those of the part; the changes in force; the planning sheet. */
    static void head(Plan plan, ObjectNode to) {
        DrawingInForce drawing = plan.drawing();
        drawing.number().ifPresent(number -> to.put("drawing-number", number));
        drawing.revision().ifPresent(revision -> to.put("drawing-revision", revision));
        drawing.sheets().ifPresent(sheets -> to.put("drawing-sheets", sheets));
        if (!drawing.changes().isEmpty()) {
            ArrayNode changes = to.putArray("changes");
            drawing.changes().forEach(changes::add);
        }
        plan.route().ifPresent(route -> to.put("route", route));
    }

    static void of(OnDrawing drawing, ObjectNode to) {
        drawing.balloon().ifPresent(balloon -> to.put("balloon", balloon.text()));
        place(drawing, to);
        Instances instances = drawing.instances();
        if (instances.count() > 1) {
            to.put("count", instances.count());
            instances
                    .one()
                    .ifPresentOrElse(
                            one -> to.put("instance", one),
                            () -> to.put("report", instances.report().key()));
        }
    }

    private static void place(OnDrawing drawing, ObjectNode to) {
        drawing.sheet().ifPresent(sheet -> to.put("sheet", sheet));
        drawing.zone().ifPresent(zone -> to.put("drawing-zone", zone));
        drawing.designator().ifPresent(designator -> to.put("designator", designator));
        if (!drawing.requirement().isEmpty()) {
            to.put("requirement", drawing.requirement());
        }
    }

    /** A line for every requirement, in the order of the drawing's numbers. */
    static void account(Sheet sheet, ArrayNode to) {
        DrawingAccount.of(sheet).lines().forEach(line -> write(line, to.addObject()));
    }

    private static void write(AccountLine line, ObjectNode to) {
        line.balloon().ifPresent(balloon -> to.put("balloon", balloon.text()));
        place(line.drawing(), to);
        line.match(new AccountLine.Cases<ObjectNode>() {
            @Override
            public ObjectNode checked(AccountLine.Checked checked) {
                return write(checked, to).put("verdict", Word.of(checked.standing()));
            }

            @Override
            public ObjectNode unanswered(AccountLine.Unanswered unanswered) {
                return to.put("in-process-only", true).put("verdict", Word.of(unanswered.standing()));
            }

            @Override
            public ObjectNode notInThisRun(AccountLine.NotInThisRun left) {
                return to.put("number", left.line().step().number()).put("verdict", JsonOccasion.NOT_IN_THIS_RUN);
            }
        });
    }

    private static ObjectNode write(AccountLine.Checked checked, ObjectNode to) {
        if (!checked.instances().isEmpty()) {
            to.put("count", checked.drawing().instances().count());
            ArrayNode instances = to.putArray("instances");
            checked.instances().forEach(instances::add);
        }
        Finding finding = checked.line().finding();
        to.put("number", finding.step().number());
        finding.check().asDocument().ifPresent(document -> to.put("where", document.where()));
        finding.step().limits().map(Limits::unit).ifPresent(unit -> sizes(checked, finding, unit, to));
        checked.line().disposed().ifPresent(disposed -> to.put("disposition", Word.of(disposed.disposition())));
        return to;
    }

    /** Each size where each is judged, as the least and the greatest; else the one that is judged. */
    private static void sizes(AccountLine.Checked checked, Finding finding, Unit unit, ObjectNode to) {
        boolean each = finding.check()
                .asDimension()
                .filter(read -> read.combine() == Combine.EACH)
                .isPresent();
        if (each) {
            checked.least().ifPresent(least -> to.put("least", figure(least, unit)));
            checked.greatest().ifPresent(greatest -> to.put("greatest", figure(greatest, unit)));
        } else {
            finding.value()
                    .ifPresent(value -> to.put(
                            "value",
                            WorkedOut.figure(
                                    value, unit, StepFigures.of(finding).places())));
        }
        to.put("unit", unit.symbol());
    }

    private static String figure(Measured measured, Unit unit) {
        return WorkedOut.figure(measured.value(), unit, WorkedOut.known(measured, unit));
    }
}
