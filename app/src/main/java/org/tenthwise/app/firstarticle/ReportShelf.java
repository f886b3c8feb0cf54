package org.tenthwise.app.firstarticle;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.export.CouldNotExport;
import org.tenthwise.app.export.Exporter;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.RunQuery;
import org.tenthwise.app.history.RunShelf;
import org.tenthwise.app.history.RunSummary;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.model.run.ReportAsked;
import org.tenthwise.model.run.ReportRole;
import org.tenthwise.model.words.Refused;

/** The reports of the store that is open, for screens. Used from the thread of the ledger. */
public final class ReportShelf {

    private static final int LATEST = 200;

    private final Ledger ledger;
    private final Clock clock;
    private final ReportBook book;
    private final ReportFiles files;
    private final Path folder;

    /** @param folder for the files of reports; made when the first is written */
    public ReportShelf(Ledger ledger, Clock clock, ReportBook book, ReportFiles files, Path folder) {
        this.ledger = ledger;
        this.clock = clock;
        this.book = book;
        this.files = files;
        this.folder = folder;
    }

    /** The one drawn up last first. */
    public List<KeptReport> reports() {
        List<KeptReport> all = new ArrayList<>(KeptReport.in(ledger));
        Collections.reverse(all);
        return all;
    }

    /** Part numbers of the latest closed runs, that of the last first. */
    public List<String> parts() {
        return ledger
                .history()
                .runs(new RunQuery(RunShelf.CLOSED, Optional.empty(), "", Optional.empty(), LATEST))
                .stream()
                .map(RunSummary::run)
                .map(RunFacts::part)
                .distinct()
                .toList();
    }

    /** The closed runs of a part number, the one last worked on first. */
    public List<RunFacts> closed(String part) {
        return Proposed.closed(ledger, part);
    }

    /** What lies ready for a report on runs. */
    public Proposed proposed(String part, List<String> runs) {
        return Proposed.of(ledger, part, runs);
    }

    /**
     * Keeps a report; one of the same identifier on the same part is drawn up anew.
     *
     * @throws Refused if the runs cannot stand in one report, or the identifier is that of another part
     */
    public ArticleReport drawUp(ReportAsked asked, List<String> runs, String by) throws CouldNotSave {
        return book.drawUp(ledger, asked, runs, by, clock);
    }

    /** @throws Refused if there is no such report, or it cannot be made again */
    public ArticleReport report(String identifier) {
        return book.again(ledger, kept(identifier));
    }

    private KeptReport kept(String identifier) {
        return KeptReport.named(identifier, ledger)
                .orElseThrow(() -> new Refused("report.refused.no-report", identifier));
    }

    /**
     * Signs a report as it was drawn up last.
     *
     * @throws Refused if there is no such report, or it cannot be signed so
     */
    public ArticleReport sign(String identifier, ReportRole role, String signedBy) throws CouldNotSave {
        return book.sign(ledger, kept(identifier), role, signedBy, clock);
    }

    /** What its files can be asked for by. */
    public List<String> formats() {
        return files.names();
    }

    /** @return the file written */
    public Path write(String identifier, String format) throws CouldNotExport {
        ArticleReport report = report(identifier);
        return new Exporter()
                .export(files.name(report), files.of(report, List.of(format)), folder)
                .get(0);
    }
}
