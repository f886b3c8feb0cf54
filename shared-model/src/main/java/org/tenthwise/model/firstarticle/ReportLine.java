package org.tenthwise.model.firstarticle;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.OnDrawing;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.AccountLine;
import org.tenthwise.model.run.StepEvent;

/**
 * A line of the account of characteristics: one requirement of the drawing, and what each run found of it. What does
 * not conform has a line of its own, with nothing of any other run in it.
 *
 * @param results at least one, at most one a run, in the order of the runs
 */
public record ReportLine(List<FoundInRun> results) {

    public ReportLine {
        results = List.copyOf(results);
    }

    private AccountLine line() {
        return results.get(0).line();
    }

    public Optional<BalloonNumber> number() {
        return line().balloon();
    }

    public OnDrawing drawing() {
        return line().drawing();
    }

    /** Absent where no check of the drawing answers its balloon. */
    public Optional<Step> step() {
        return results.get(0).checked().map(checked -> checked.line().step());
    }

    /** What a run found of it; absent where that run stands in another line of the characteristic. */
    public Optional<FoundInRun> of(int column) {
        return results.stream().filter(result -> result.column() == column).findFirst();
    }

    /** The worst of its results. */
    public CellStanding standing() {
        return Stream.of(CellStanding.DOES_NOT_CONFORM, CellStanding.UNPROVEN, CellStanding.OPEN)
                .filter(this::is)
                .findFirst()
                .orElse(CellStanding.CONFORMS);
    }

    private boolean is(CellStanding standing) {
        return results.stream().anyMatch(result -> result.standing() == standing);
    }

    /** The numbers of the documents under which it was decided what becomes of it, each once. */
    public List<String> nonconformances() {
        return results.stream()
                .flatMap(result -> result.decided().stream())
                .map(StepEvent.DispositionSigned::document)
                .flatMap(Optional::stream)
                .distinct()
                .toList();
    }
}
