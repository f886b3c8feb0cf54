package org.tenthwise.app.firstarticle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.tenthwise.app.history.RunName;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Baseline;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.JoinedRun;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.run.ReportAsked;
import org.tenthwise.model.words.Refused;

/**
 * What a partial report stands on. Where its runs were begun on a run, it is that one; what is typed beside can name a
 * report on it besides, and nothing else.
 */
final class ReportBaseline {

    private static final Pattern BETWEEN = Pattern.compile("[\\s,;:()]+");
    /** "rev", "run", "report", in whatever language: it names nothing. */
    private static final Pattern PLAIN_WORD = Pattern.compile("\\p{L}{3,}\\.?");

    private final KeptEntries kept;
    /** As the runs name them, each once. */
    private final List<Baseline> named;
    /** The runs as this store calls them. */
    private final List<String> runs;

    /** @param joined the runs of the report, as this store calls them */
    ReportBaseline(KeptEntries kept, List<String> joined) {
        this.kept = kept;
        List<Baseline> all = new ArrayList<>();
        List<String> here = new ArrayList<>();
        for (String run : joined) {
            begun(run)
                    .map(Event.Begun::occasion)
                    .filter(occasion -> occasion.purpose() == Purpose.FIRST_ARTICLE_PARTIAL)
                    .flatMap(Occasion::baseline)
                    .ifPresent(on -> {
                        all.add(on);
                        here.add(RunName.of(run).beside(on.run()));
                    });
        }
        this.named = all.stream().distinct().toList();
        this.runs = here.stream().distinct().toList();
    }

    private Optional<Event.Begun> begun(String run) {
        return kept.entries(run).stream().findFirst().flatMap(entry -> entry.event()
                .as(Event.Begun.class));
    }

    /** Part number, revision and run of what the runs stand on; empty where they name none. */
    String said() {
        return runs.isEmpty() ? "" : said(runs.get(0));
    }

    private String said(String run) {
        return sheet(run)
                .map(sheet -> sheet.plan().part())
                .map(part -> "%s %s, %s".formatted(part.number(), part.revision(), run))
                .orElse(run);
    }

    /**
     * A report as it is asked for, with what its runs stand on.
     *
     * @throws Refused if the runs stand on different ones, or what is typed says otherwise
     */
    ReportAsked held(ReportAsked asked) {
        if (!asked.isPartial() || runs.isEmpty()) {
            return asked;
        }
        if (runs.size() > 1) {
            throw new Refused("report.refused.baselines", runs);
        }
        List<String> typed = BETWEEN.splitAsStream(asked.baseline())
                .filter(word -> !word.isEmpty())
                .toList();
        List<String> reports = reportsOn(runs.get(0));
        List<String> known =
                Stream.concat(Stream.of(runs.get(0)), reports.stream()).toList();
        List<String> part = sheet(runs.get(0))
                .map(sheet -> sheet.plan().part())
                .map(of -> List.of(of.number(), of.revision()))
                .orElse(List.of());
        boolean names = typed.stream().anyMatch(word -> isOneOf(known, word))
                || !part.isEmpty() && part.stream().allMatch(word -> isOneOf(typed, word));
        boolean nothingElse = typed.stream()
                .allMatch(word -> isOneOf(known, word)
                        || isOneOf(part, word)
                        || PLAIN_WORD.matcher(word).matches());
        if (!names || !nothingElse) {
            throw new Refused("report.refused.other-baseline", said(), asked.baseline());
        }
        return asked.standingOn(String.join(
                ", ",
                Stream.concat(Stream.of(said()), reports.stream().filter(report -> isOneOf(typed, report)))
                        .toList()));
    }

    private static boolean isOneOf(List<String> words, String word) {
        return words.stream().anyMatch(word::equalsIgnoreCase);
    }

    private List<String> reportsOn(String run) {
        return KeptReport.in(kept).stream()
                .filter(report -> report.runs().stream().map(JoinedRun::run).anyMatch(run::equals))
                .map(report -> report.asked().identifier())
                .toList();
    }

    /** The plan of what a partial report stands on; absent for a full one, and where nobody here knows that run. */
    Optional<Plan> plan(ReportAsked asked) {
        if (!asked.isPartial()) {
            return Optional.empty();
        }
        return Stream.concat(runs.stream(), typed(asked))
                .flatMap(run -> sheet(run).stream())
                .map(Sheet::plan)
                .findFirst();
    }

    /** Runs of the part that what is typed names, itself or by a report on them. */
    private Stream<String> typed(ReportAsked asked) {
        List<String> words = BETWEEN.splitAsStream(asked.baseline()).toList();
        return Stream.concat(
                        kept.runs().stream().filter(run -> isOneOf(words, run)),
                        KeptReport.in(kept).stream()
                                .filter(report -> isOneOf(words, report.asked().identifier()))
                                .flatMap(report -> report.runs().stream().map(JoinedRun::run)))
                .filter(run -> sheet(run)
                        .map(sheet -> sheet.plan().part())
                        .map(PartId::number)
                        .filter(asked.part().number()::equals)
                        .isPresent());
    }

    /** A run by its name, where it is the one that was meant: named with a head, it had that once. */
    private Optional<Sheet> sheet(String run) {
        boolean meant =
                begun(run).isPresent() && (!runs.contains(run) || named.stream().allMatch(on -> had(run, on.head())));
        return meant ? Optional.of(Runs.sheet(kept, run)) : Optional.empty();
    }

    private boolean had(String run, String hash) {
        RunHead head = RunHead.OF_NOTHING;
        for (StoredEntry entry : kept.stored(run)) {
            head = head.and(entry);
            if (head.hash().equals(hash)) {
                return true;
            }
        }
        return false;
    }
}
