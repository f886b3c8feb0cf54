package org.tenthwise.app.history;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.record.GaugesUsed;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Disposing;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;

/** What is open in one run, as its sheet stands. A run put away has nothing open but what was scrapped in it. */
final class MattersOfRun {

    private final Sheet sheet;

    private MattersOfRun(Sheet sheet) {
        this.sheet = sheet;
    }

    static List<Matter> of(Sheet sheet) {
        return sheet.outcome() == Outcome.PUT_AWAY ? List.of() : new MattersOfRun(sheet).all();
    }

    private List<Matter> all() {
        List<Matter> all = new ArrayList<>();
        for (Line line : sheet.lines()) {
            if (line.asked()) {
                of(line).ifPresent(all::add);
                lapsed(line).ifPresent(all::add);
            }
        }
        all.addAll(pastDue());
        boolean closed = sheet.run().closed().isPresent();
        if (!closed || sheet.outcome() == Outcome.NOT_COMPLETE) {
            all.add(ofTheRun(MatterKind.RUN_NOT_COMPLETE));
        }
        if (closed && !isDecided()) {
            all.add(ofTheRun(MatterKind.SIGNATURE_MISSING));
        }
        return all;
    }

    /** One a mark and day: of a gauge with two certificates, or called as its ring is, neither hides the other. */
    private List<Matter> pastDue() {
        Map<String, Matter> ofGauge = new LinkedHashMap<>();
        for (GaugesUsed.Used used : GaugesUsed.pastDue(sheet)) {
            Entry first = used.pastDue().orElseThrow();
            String mark = used.what().mark();
            String due = used.calibration().due().orElseThrow().toString();
            ofGauge.putIfAbsent(
                    mark + " " + due, new Matter(MatterKind.GAUGE_PAST_DUE, 0, mark, due, first.by(), first.at()));
        }
        return List.copyOf(ofGauge.values());
    }

    private Optional<Matter> of(Line line) {
        if (line.byConcession()) {
            return Optional.of(
                    line.finding().verdict().passed()
                            ? signed(MatterKind.REPAIR, line, lastRepairOf(line))
                            : signed(MatterKind.CONCESSION, line, lastOf(line)));
        }
        if (line.isOfDrawing() && sheet.isOut(line) && !hasDocument(line)) {
            return Optional.of(signed(MatterKind.NONCONFORMANCE, line, lastOf(line)));
        }
        boolean paper = line.step().check().asDocument().isPresent();
        return paper && line.open()
                ? Optional.of(signed(MatterKind.DOCUMENT_TO_COME, line, Optional.empty()))
                : Optional.empty();
    }

    private static boolean hasDocument(Line line) {
        return line.disposed().flatMap(StepEvent.DispositionSigned::document).isPresent();
    }

    /** What was signed and does not hold any more, while the check is not settled without it. */
    private Optional<Matter> lapsed(Line line) {
        return line.lapsed()
                .filter(any -> line.open())
                .map(lapsed -> signed(
                        switch (lapsed.disposed().disposition()) {
                            case USE_AS_IS -> MatterKind.CONCESSION_LAPSED;
                            case REPAIR -> MatterKind.REPAIR_LAPSED;
                            default -> MatterKind.DISPOSITION_LAPSED;
                        },
                        line,
                        Optional.of(lapsed)));
    }

    private static Optional<Disposing> lastOf(Line line) {
        return line.dispositions().stream().reduce((before, after) -> after);
    }

    private static Optional<Disposing> lastRepairOf(Line line) {
        return line.dispositions().stream()
                .filter(any -> any.disposed().disposition() == Disposition.REPAIR)
                .reduce((before, after) -> after);
    }

    /** Whether somebody said yes or no to the run as it stands. */
    private boolean isDecided() {
        return !sheet.against().isEmpty()
                || sheet.run().signatures().stream()
                        .anyMatch(signature -> signature.meaning() == SignedAs.ACCEPTED && !signature.lapsed());
    }

    private Matter signed(MatterKind kind, Line line, Optional<Disposing> by) {
        Entry entry = by.map(signed -> signed.lapsed().orElse(signed.entry()))
                .orElse(sheet.run().last());
        return new Matter(
                kind,
                line.step().number(),
                line.step().name(),
                by.flatMap(signed -> signed.disposed().document()).orElse(""),
                by.map(signed -> signed.disposed().signedBy())
                        .orElse(sheet.run().by()),
                entry.at());
    }

    private Matter ofTheRun(MatterKind kind) {
        return new Matter(kind, 0, "", "", sheet.run().by(), sheet.run().last().at());
    }
}
