package org.tenthwise.app.firstarticle;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.model.firstarticle.FirstArticle;
import org.tenthwise.model.firstarticle.PartBefore;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.JoinedRun;
import org.tenthwise.model.run.Person;
import org.tenthwise.model.run.ReportAsked;
import org.tenthwise.model.run.ReportEvent;
import org.tenthwise.model.run.ReportRole;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;

/** Draws reports up, signs them and makes them again as they were, of the runs of one store. */
public final class ReportBook {

    private static final int PAGE = 60;

    private final String version;

    /** @param version of the tool, as its files name it */
    public ReportBook(String version) {
        this.version = version;
    }

    /**
     * Keeps a report. One of the same identifier on the same part is drawn up anew, and what was signed of it holds no
     * more.
     *
     * @throws Refused if the runs cannot stand in one report, or the identifier is that of another part
     */
    public ArticleReport drawUp(Ledger ledger, ReportAsked said, List<String> runs, String by, Clock clock)
            throws CouldNotSave {
        List<JoinedRun> joined = joined(ledger, runs);
        ReportAsked asked = new ReportBaseline(ledger, runs).held(said);
        FirstArticle article = article(ledger, asked, joined);
        KeptReport.named(asked.identifier(), ledger)
                .filter(other -> !other.asked().part().equals(asked.part()))
                .ifPresent(other -> {
                    throw new Refused(
                            "report.refused.identifier",
                            asked.identifier(),
                            other.asked().part().number(),
                            other.asked().part().revision());
                });
        Entry entry =
                ledger.append(Entry.SHOP, OffsetDateTime.now(clock), by, new ReportEvent.ReportDrawnUp(asked, joined));
        return new ArticleReport(article, Optional.of(new KeptReport(entry, List.of())), List.of(), version);
    }

    /**
     * Signs a report as it was drawn up last.
     *
     * @throws Refused if something is not accounted for, or was entered in a run since; if who looks it through is who
     *     verified it, or nobody has verified it yet
     */
    public ArticleReport sign(Ledger ledger, KeptReport report, ReportRole role, String signedBy, Clock clock)
            throws CouldNotSave {
        String identifier = report.asked().identifier();
        ArticleReport stands = again(ledger, report);
        if (!stands.movedOn().isEmpty()) {
            throw new Refused("report.refused.moved-on", stands.movedOn());
        }
        stands.article().open().stream()
                .filter(lack -> lack.why().leavesUnaccounted())
                .findFirst()
                .ifPresent(lack -> {
                    throw new Refused(Message.of("report.refused.unaccounted", ReportWords.said(lack)));
                });
        if (role == ReportRole.APPROVED) {
            Entry verified = report.signedAs(ReportRole.VERIFIED)
                    .orElseThrow(() -> new Refused("report.refused.not-verified", identifier));
            if (Person.isSame(KeptReport.name(verified), signedBy)) {
                throw new Refused("report.refused.same-person", signedBy);
            }
        }
        ledger.append(
                Entry.SHOP,
                OffsetDateTime.now(clock),
                signedBy,
                new ReportEvent.ReportSigned(identifier, role, signedBy));
        return again(ledger, KeptReport.named(identifier, ledger).orElseThrow());
    }

    /**
     * A report as it was drawn up, whatever was entered in its runs since.
     *
     * @throws Refused if the entries of a run are not those it was drawn up of
     */
    public ArticleReport again(KeptEntries kept, KeptReport report) {
        return new ArticleReport(
                article(kept, report.asked(), report.runs()), Optional.of(report), movedOn(kept, report), version);
    }

    /** Runs of a report in which something was entered since it was drawn up. */
    private static List<String> movedOn(KeptEntries kept, KeptReport report) {
        return report.runs().stream()
                .filter(joined -> kept.runHead(joined.run()).place() > joined.entries())
                .map(JoinedRun::run)
                .toList();
    }

    private static List<JoinedRun> joined(KeptEntries kept, List<String> runs) {
        return runs.stream()
                .distinct()
                .map(run -> {
                    RunHead head = kept.runHead(run);
                    if (head.equals(RunHead.OF_NOTHING) || run.equals(Entry.SHOP)) {
                        throw new Refused("report.refused.no-run", run);
                    }
                    return new JoinedRun(run, head.place(), head.hash());
                })
                .toList();
    }

    private static FirstArticle article(KeptEntries kept, ReportAsked asked, List<JoinedRun> joined) {
        List<Sheet> sheets = new ArrayList<>();
        for (JoinedRun run : joined) {
            sheets.add(Runs.sheet(kept, new Run(entries(kept, run))));
        }
        Optional<Plan> baseline =
                new ReportBaseline(kept, joined.stream().map(JoinedRun::run).toList()).plan(asked);
        return FirstArticle.of(
                asked, sheets, new PartBefore(new LastMade(kept, asked.part().number()).before(sheets), baseline));
    }

    /** The entries of a run as they were when it was joined, each of them the very one. */
    private static List<Entry> entries(KeptEntries kept, JoinedRun joined) {
        List<StoredEntry> stored = kept.stored(joined.run());
        List<Entry> entries = kept.entries(joined.run());
        RunHead head = RunHead.OF_NOTHING;
        for (StoredEntry entry : stored.subList(0, (int) Math.min(stored.size(), joined.entries()))) {
            head = head.and(entry);
        }
        if (!head.hash().equals(joined.head())) {
            throw new Refused("report.refused.changed", joined.run());
        }
        return entries.subList(0, (int) joined.entries());
    }
}
