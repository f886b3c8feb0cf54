package org.tenthwise.app.matters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Disposing;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;

/** What is open in one run, as its sheet stands. A run put away has nothing open but what was scrapped in it. */
final class MattersOfRun {

    private final Sheet sheet;
    private final OpenMatter.OfRun run;

    /** @param id as the store names the run */
    private MattersOfRun(String id, Sheet sheet) {
        this.sheet = sheet;
        Event.Begun begun = sheet.run().begun();
        this.run = new OpenMatter.OfRun(
                id, begun.part().number(), begun.part().revision(), begun.serial(), begun.lot(), begun.machine());
    }

    static List<OpenMatter> of(String id, Sheet sheet) {
        return sheet.outcome() == Outcome.PUT_AWAY ? List.of() : new MattersOfRun(id, sheet).all();
    }

    private List<OpenMatter> all() {
        List<OpenMatter> all = new ArrayList<>();
        for (Line line : sheet.lines()) {
            if (line.asked()) {
                of(line).ifPresent(all::add);
                lapsed(line).ifPresent(all::add);
            }
        }
        boolean closed = sheet.run().closed().isPresent();
        if (!closed || sheet.outcome() == Outcome.NOT_COMPLETE) {
            all.add(ofTheRun(OpenMatter.Kind.RUN_NOT_COMPLETE));
        }
        if (closed && !isDecided()) {
            all.add(ofTheRun(OpenMatter.Kind.SIGNATURE_MISSING));
        }
        return all;
    }

    private Optional<OpenMatter> of(Line line) {
        if (line.byConcession()) {
            return Optional.of(signed(OpenMatter.Kind.CONCESSION, line, lastOf(line)));
        }
        if (line.isOfDrawing() && sheet.isOut(line) && !hasDocument(line)) {
            return Optional.of(signed(OpenMatter.Kind.NONCONFORMANCE, line, lastOf(line)));
        }
        boolean paper = line.step().check().asDocument().isPresent();
        return paper && line.open()
                ? Optional.of(signed(OpenMatter.Kind.DOCUMENT_TO_COME, line, Optional.empty()))
                : Optional.empty();
    }

    private static boolean hasDocument(Line line) {
        return line.disposed().flatMap(StepEvent.DispositionSigned::document).isPresent();
    }

    /** What was signed and does not hold any more, while the check is not settled without it. */
    private Optional<OpenMatter> lapsed(Line line) {
        return line.lapsed()
                .filter(any -> line.open())
                .map(lapsed -> signed(
                        lapsed.disposed().disposition().departsFromTheDrawing()
                                ? OpenMatter.Kind.CONCESSION_LAPSED
                                : OpenMatter.Kind.DISPOSITION_LAPSED,
                        line,
                        Optional.of(lapsed)));
    }

    private static Optional<Disposing> lastOf(Line line) {
        return line.dispositions().stream().reduce((before, after) -> after);
    }

    /** Whether somebody said yes or no to the run as it stands. */
    private boolean isDecided() {
        return !sheet.against().isEmpty()
                || sheet.run().signatures().stream()
                        .anyMatch(signature -> signature.meaning() == SignedAs.ACCEPTED && !signature.lapsed());
    }

    private OpenMatter signed(OpenMatter.Kind kind, Line line, Optional<Disposing> by) {
        Entry entry = by.map(signed -> signed.lapsed().orElse(signed.entry()))
                .orElse(sheet.run().last());
        return new OpenMatter(
                kind,
                Optional.of(run),
                Optional.of(
                        new OpenMatter.OfStep(line.step().number(), line.step().name())),
                by.flatMap(signed -> signed.disposed().document()).orElse(""),
                by.map(signed -> signed.disposed().signedBy())
                        .orElse(sheet.run().by()),
                Optional.of(entry.at()));
    }

    private OpenMatter ofTheRun(OpenMatter.Kind kind) {
        return new OpenMatter(
                kind,
                Optional.of(run),
                Optional.empty(),
                "",
                sheet.run().by(),
                Optional.of(sheet.run().last().at()));
    }
}
