package org.tenthwise.app.firstarticle;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.RunQuery;
import org.tenthwise.app.history.RunShelf;
import org.tenthwise.app.history.RunSummary;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.run.ReportAsked;
import org.tenthwise.model.words.Refused;

/**
 * What lies ready for a report on runs, of what the runs themselves say; a person confirms it. Nothing is proposed that
 * no run says.
 *
 * @param runs that are joined
 */
public record Proposed(ReportAsked asked, List<String> runs) {

    private static final int PAGE = 200;

    public Proposed {
        runs = List.copyOf(runs);
    }

    /**
     * @param runs to be joined; where none is named, the one closed run of the part
     * @throws Refused if a run is not in the store, or none is named and there are none or several
     */
    public static Proposed of(KeptEntries kept, String part, List<String> runs) {
        List<String> joined = runs.isEmpty() ? List.of(only(kept, part)) : runs;
        joined.stream()
                .filter(run -> kept.entries(run).isEmpty()
                        || kept.entries(run)
                                .get(0)
                                .event()
                                .as(Event.Begun.class)
                                .isEmpty())
                .findFirst()
                .ifPresent(run -> {
                    throw new Refused("report.refused.no-run", run);
                });
        List<Sheet> sheets = joined.stream().map(run -> Runs.sheet(kept, run)).toList();
        sheets.stream()
                .filter(sheet -> !sheet.plan().part().number().equals(part))
                .findFirst()
                .ifPresent(other -> {
                    throw new Refused(
                            "model.report.other-part",
                            other.run().id(),
                            other.plan().part().number(),
                            part);
                });
        return new Proposed(new Proposing(kept, joined, sheets, part).asked(), joined);
    }

    /** The closed runs of a part number, the one last worked on first. */
    public static List<RunFacts> closed(KeptEntries kept, String part) {
        return kept
                .history()
                .runs(new RunQuery(RunShelf.CLOSED, Optional.empty(), part, Optional.empty(), PAGE))
                .stream()
                .map(RunSummary::run)
                .filter(run -> run.part().equals(part))
                .toList();
    }

    private static String only(KeptEntries kept, String part) {
        List<String> closed = closed(kept, part).stream().map(RunFacts::id).toList();
        if (closed.isEmpty()) {
            throw new Refused("report.refused.no-closed", part);
        }
        if (closed.size() > 1) {
            throw new Refused("report.refused.which-run", part, closed);
        }
        return closed.get(0);
    }

    /** Reads one thing after the other out of the runs. */
    private static final class Proposing {

        private final KeptEntries kept;
        private final List<String> joined;
        private final List<Sheet> sheets;
        private final String part;

        Proposing(KeptEntries kept, List<String> joined, List<Sheet> sheets, String part) {
            this.kept = kept;
            this.joined = joined;
            this.sheets = sheets;
            this.part = part;
        }

        ReportAsked asked() {
            boolean partial = occasions().anyMatch(of -> of.purpose() == Purpose.FIRST_ARTICLE_PARTIAL);
            List<String> affected = partial ? affected() : List.of();
            String reason = said(Occasion::reason);
            String baseline = partial ? new ReportBaseline(kept, joined).said() : "";
            boolean whole = !affected.isEmpty() && !reason.isBlank() && !baseline.isBlank();
            return new ReportAsked(
                    identifier(),
                    sheets.get(0).plan().part(),
                    ReportAsked.Edition.C,
                    whole ? ReportAsked.Extent.PARTIAL : ReportAsked.Extent.FULL,
                    reason,
                    baseline,
                    whole ? affected : List.of(),
                    said(Occasion::order),
                    "",
                    "",
                    "",
                    changes(),
                    false,
                    "");
        }

        /** The part and how many reports there are on it. */
        private String identifier() {
            long before = KeptReport.in(kept).stream()
                    .filter(report -> report.asked().part().number().equals(part))
                    .count();
            return "%s-FAIR-%s".formatted(part, before + 1);
        }

        private Stream<Occasion> occasions() {
            return sheets.stream().map(sheet -> sheet.run().begun().occasion());
        }

        /** The first that a run says. */
        private String said(Function<Occasion, String> of) {
            return occasions()
                    .map(of)
                    .filter(said -> !said.isBlank())
                    .findFirst()
                    .orElse("");
        }

        private List<String> changes() {
            return occasions().flatMap(of -> of.changes().stream()).distinct().toList();
        }

        /** What partial runs were begun for, by balloon or by name, each once. */
        private List<String> affected() {
            return sheets.stream()
                    .filter(sheet -> sheet.run().begun().occasion().purpose() == Purpose.FIRST_ARTICLE_PARTIAL)
                    .flatMap(sheet ->
                            sheet.run().begun().occasion().affected().stream().map(step -> called(sheet.plan(), step)))
                    .distinct()
                    .toList();
        }

        private static String called(Plan plan, int number) {
            Step step = plan.step(number);
            return plan.balloon(step).map(BalloonNumber::text).orElse(step.name());
        }
    }
}
