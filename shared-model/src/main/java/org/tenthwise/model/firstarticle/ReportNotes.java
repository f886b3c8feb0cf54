package org.tenthwise.model.firstarticle;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.Sheet;

/** What whoever reads a report should know besides. */
final class ReportNotes {

    /**
     * From the last production operation to the restart: what the idle time may have affected is renewed. Source:
     * AS9102 Rev B, 4.6 (6).
     */
    private static final int YEARS_OF_LAPSE = 2;

    private final List<Sheet> runs;
    private final Optional<LocalDate> before;
    private final List<String> unsaid;

    /** @param unsaid issues of the plan since the baseline of which nobody said what they affect */
    ReportNotes(List<Sheet> runs, Optional<LocalDate> before, List<String> unsaid) {
        this.runs = runs;
        this.before = before;
        this.unsaid = List.copyOf(unsaid);
    }

    List<ReportNote> all() {
        List<ReportNote> notes = new ArrayList<>();
        LocalDate begun = runs.stream()
                .map(sheet -> sheet.run().entries().get(0).at().toLocalDate())
                .min(Comparator.naturalOrder())
                .orElseThrow();
        before.filter(last -> !begun.isBefore(last.plusYears(YEARS_OF_LAPSE)))
                .ifPresent(last ->
                        notes.add(new ReportNote(ReportNote.Of.LAPSE, List.of(last.toString(), begun.toString()))));
        List<String> issues =
                runs.stream().map(Sheet::plan).map(Plan::issue).distinct().toList();
        if (issues.size() > 1) {
            notes.add(new ReportNote(ReportNote.Of.SEVERAL_ISSUES, issues));
        }
        if (!unsaid.isEmpty()) {
            notes.add(new ReportNote(ReportNote.Of.NOT_SAID, unsaid));
        }
        return notes;
    }
}
