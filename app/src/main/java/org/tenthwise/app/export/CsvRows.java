package org.tenthwise.app.export;

import static org.tenthwise.app.export.CsvColumn.*;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.plan.IssueOfPlan;
import org.tenthwise.model.plan.OnDrawing;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.PassStory;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Disposing;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.Remark;
import org.tenthwise.model.run.Signature;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Word;

/** All rows of the table, in the order of the plan; what is said of the whole run is in each of them. */
final class CsvRows {

    /** Where a remark goes, by its kind. */
    private static final Map<Remark.Kind, CsvColumn> COLUMNS =
            Map.of(Remark.Kind.DOUBT, DOUBT, Remark.Kind.NOTE, NOTE, Remark.Kind.CUT_ON_THESE, CUT_ON_THESE);

    private CsvRows() {}

    static List<CsvRow> of(Evidence evidence) {
        CsvRow run = CsvRow.in(evidence.sheet().plan().unit());
        run(run, evidence);
        List<CsvRow> rows = new ArrayList<>();
        for (Line line : evidence.sheet().lines()) {
            CsvRow characteristic = under(run, evidence.sheet().plan(), line);
            rows.addAll(taken(evidence, line, characteristic));
            line.dispositions().forEach(signed -> rows.add(disposing(characteristic.copy(), signed)));
            rows.addAll(remarks(evidence, line.step().number(), characteristic));
        }
        rows.addAll(remarks(evidence, 0, run));
        return rows;
    }

    private static List<CsvRow> taken(Evidence evidence, Line line, CsvRow characteristic) {
        List<CsvRow> taken = new ArrayList<>();
        for (PassStory story : PassStory.of(evidence.sheet().run(), line)) {
            CsvRow pass = characteristic.copy();
            CsvFound.pass(pass, story);
            if (story.pass().number() == line.passes().size()) {
                CsvFound.disposed(pass, line);
            }
            story.temperatures().forEach(read -> taken.add(CsvTaken.temperature(pass.copy(), read)));
            story.readings().forEach(read -> taken.add(CsvTaken.reading(pass.copy(), story, read)));
            story.answers().forEach(given -> taken.add(CsvTaken.answer(pass.copy(), given)));
            story.documents().forEach(given -> taken.addAll(CsvTaken.document(pass.copy(), given)));
        }
        if (!line.asked()) {
            CsvRow left = characteristic.copy();
            left.text(VERDICT, JsonOccasion.NOT_IN_THIS_RUN);
            return List.of(left);
        }
        if (taken.isEmpty()) {
            CsvRow nothing = characteristic.copy();
            CsvFound.finding(nothing, line.finding());
            CsvFound.disposed(nothing, line);
            taken.add(nothing);
        }
        return taken;
    }

    /** What was signed has a row of its own, in force or lapsed, as it is an entry of its own. */
    private static CsvRow disposing(CsvRow row, Disposing signed) {
        CsvFound.disposed(row, signed.disposed());
        signed.lapsed().ifPresent(with -> row.number(DISPOSITION_LAPSED_WITH, with.seq()));
        return CsvTaken.entry(row, signed.entry(), Optional.empty());
    }

    private static List<CsvRow> remarks(Evidence evidence, int step, CsvRow beginning) {
        return evidence.sheet().run().remarks().stream()
                .filter(remark -> remark.step() == step)
                .map(remark -> {
                    CsvRow row = beginning.copy();
                    row.text(COLUMNS.get(remark.kind()), remark.words());
                    return CsvTaken.entry(row, remark.entry(), Optional.empty());
                })
                .toList();
    }

    private static void run(CsvRow row, Evidence evidence) {
        Plan plan = evidence.sheet().plan();
        Event.Begun begun = evidence.sheet().run().begun();
        row.text(PART, begun.part().number());
        row.text(REVISION, begun.part().revision());
        row.text(SERIAL, begun.serial());
        row.text(LOT, begun.noLot() ? "none" : begun.lot());
        row.text(MACHINE, begun.machine());
        row.text(RUN, evidence.sheet().run().id());
        row.text(PART_NAME, plan.name());
        row.text(MATERIAL, plan.material());
        row.text(DRAWING, plan.drawing().title());
        row.text(DRAWING_NUMBER, plan.drawing().number().orElse(""));
        row.text(DRAWING_REVISION, plan.drawing().revision().orElse(""));
        row.text(CHANGES, String.join("; ", plan.drawing().changes()));
        row.text(ROUTE, plan.route().orElse(""));
        row.text(OUTCOME, Word.of(evidence.sheet().outcome()));
        occasion(row, evidence.sheet().run().begun().occasion());
        row.text(
                SIGNATURES,
                evidence.sheet().run().signatures().stream()
                        .map(signature -> signature(signature, evidence.sheet()))
                        .collect(Collectors.joining("; ")));
        row.text(REMARK, plan.remark());
        row.text(PLAN_ISSUE, plan.issue());
        plan.issued().ifPresent(issue -> issued(row, issue));
        row.text(PLAN_SHA256, begun.plan().sha256());
        row.number(RUN_ENTRIES, evidence.head().place());
        row.number(LAST_ENTRY, evidence.head().seq());
        row.text(RUN_HASH, evidence.head().hash());
        row.text(TOOL, evidence.tool());
    }

    private static void issued(CsvRow row, IssueOfPlan issue) {
        row.text(ISSUE_REASON, issue.reason());
        row.text(ISSUED_BY, issue.by());
        row.text(APPROVED_BY, issue.approvedBy().orElse(""));
        row.text(ISSUED_ON, issue.on().map(LocalDate::toString).orElse(""));
        row.text(
                AFFECTED,
                issue.affected()
                        .map(affected -> affected.isEmpty() ? "none" : String.join("; ", affected))
                        .orElse(""));
    }

    /** A refusal after which something was changed and that nobody has overcome since is not called lapsed. */
    private static String signature(Signature signature, Sheet sheet) {
        String said = signature.meaning() == SignedAs.OTHER
                ? signature.words()
                : signature.meaning().word();
        boolean gone = signature.lapsed() && !sheet.against().contains(signature);
        return "%s by %s at %s%s"
                .formatted(
                        said,
                        signature.signedBy(),
                        CsvRow.said(signature.entry().at()),
                        gone ? " (lapsed)" : "");
    }

    /** Decimals of a degree beside limits with marks would be taken for minutes: the row has one unit. */
    private static Written amongLimits(Written expanded, Step step) {
        return step.limits()
                .map(Limits::unit)
                .filter(unit -> unit.isOfAngle() && expanded.unit() == Unit.DEGREE)
                .map(expanded::in)
                .orElse(expanded);
    }

    /** The balloon a row is of: the one it names; else, of a characteristic, the one the plan gives it. */
    static Optional<BalloonNumber> balloon(Plan plan, Step step) {
        return step.drawing().balloon().or(() -> step.isOfDrawing() ? plan.balloon(step) : Optional.empty());
    }

    private static void drawing(CsvRow row, Plan plan, Step step) {
        OnDrawing drawing = step.drawing();
        balloon(plan, step).ifPresent(balloon -> row.text(BALLOON, balloon.text()));
        drawing.sheet().ifPresent(sheet -> row.text(SHEET, sheet));
        drawing.zone().ifPresent(zone -> row.text(DRAWING_ZONE, zone));
        drawing.designator().ifPresent(designator -> row.text(DESIGNATOR, designator));
        if (drawing.instances().count() > 1) {
            row.number(COUNT, drawing.instances().count());
            drawing.instances().one().ifPresent(one -> row.number(INSTANCE, one));
        }
        row.text(REQUIREMENT, drawing.requirement());
    }

    private static void specified(CsvRow row, DocumentCheck document) {
        row.text(WHERE, document.where());
        row.text(SPECIFICATION, document.specified().specification());
        row.text(FORM, document.specified().form());
        row.text(CODE, document.specified().code());
        row.text(SUPPLIER, document.specified().supplier());
    }

    private static void occasion(CsvRow row, Occasion occasion) {
        row.text(PURPOSE, Word.of(occasion.purpose()));
        occasion.piece().ifPresent(piece -> row.number(PIECE, piece));
        occasion.baseline().ifPresent(baseline -> {
            row.text(BASELINE, baseline.run());
            row.text(BASELINE_HEAD, baseline.head());
        });
        row.text(PURPOSE_REASON, occasion.reason());
        row.text(ORDER_NUMBER, occasion.order());
        row.text(CHANGES_IN_FORCE, String.join("; ", occasion.changes()));
    }

    private static CsvRow under(CsvRow run, Plan plan, Line line) {
        Step step = line.step();
        CsvRow row = step.limits()
                .map(limits ->
                        run.copy(limits.unit(), StepFigures.of(line.finding()).places()))
                .orElseGet(run::copy);
        row.number(NUMBER, step.number());
        row.text(CHARACTERISTIC, step.name());
        drawing(row, plan, step);
        row.text(CHECK, step.check().key());
        row.text(CLASS, Word.of(step.stepClass()));
        step.clamping().ifPresent(clamping -> row.text(CLAMPING, clamping.key()));
        step.check().asTurn().ifPresent(turn -> {
            row.text(
                    HOLDING,
                    turn.holding() == Holding.UNSAID ? "" : turn.holding().key());
            if (turn.jaws() > 0) {
                row.number(JAW_1_AT, turn.firstJaw());
            }
        });
        if (step.check().isInOrder()) {
            row.number(OPERATION, step.operation());
        }
        step.check().asDocument().ifPresent(document -> specified(row, document));
        row.text(REPAIRED, line.repaired() ? "yes" : "");
        step.limits().ifPresent(limits -> {
            row.text(UNIT, limits.unit().symbol());
            limits.lower().ifPresent(lower -> row.figure(LOWER_LIMIT, lower));
            limits.upper().ifPresent(upper -> row.figure(UPPER_LIMIT, upper));
            limits.origin().ifPresent(origin -> {
                row.text(LIMITS_OF, origin.designation());
                row.text(LIMITS_BY, origin.standard().toString());
            });
        });
        step.check().certifiedEnds().ifPresent(ends -> {
            row.figure(GO_SIZE, ends.go());
            row.figure(NOT_GO_SIZE, ends.notGo());
            row.text(GAUGE_FORM, ends.form().key());
        });
        step.check().asDimension().ifPresent(size -> row.figure(GUARD_BAND, size.guardBand()));
        step.check().means().flatMap(Check.Means::uncertainty).ifPresent(uncertainty -> {
            row.figure(UNCERTAINTY, amongLimits(uncertainty.expanded(), step));
            row.number(COVERAGE_FACTOR, uncertainty.coverageFactor());
            row.text(UNCERTAINTY_OF, uncertainty.name());
        });
        return row;
    }
}
