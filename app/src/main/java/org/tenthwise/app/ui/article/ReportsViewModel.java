package org.tenthwise.app.ui.article;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.app.firstarticle.KeptReport;
import org.tenthwise.app.firstarticle.ReportShelf;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.run.ReportRole;
import org.tenthwise.model.words.Words;

/** The reports of the shop, the one drawn up last first. Screen thread only. */
public final class ReportsViewModel {

    private final ReportShelf shelf;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final ReadOnlyObjectWrapper<Optional<List<KeptReport>>> reports =
            new ReadOnlyObjectWrapper<>(Optional.empty());

    public ReportsViewModel(ReportShelf shelf, LedgerTasks tasks, Words words, Navigator navigator) {
        this.shelf = shelf;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
    }

    /** Absent until they were looked up. */
    public ReadOnlyObjectProperty<Optional<List<KeptReport>>> reportsProperty() {
        return reports.getReadOnlyProperty();
    }

    public void load() {
        tasks.run(shelf::reports, found -> reports.set(Optional.of(found)));
    }

    /** Its identifier and part. */
    public String title(KeptReport report) {
        return words.say(
                "report.row",
                report.asked().identifier(),
                words.say(
                        "ask.part-revision",
                        report.asked().part().number(),
                        report.asked().part().revision()));
    }

    /** Full or partial, and how far it is signed. */
    public String line(KeptReport report) {
        String signed = report.signedAs(ReportRole.APPROVED).isPresent()
                ? words.say("report.signed.approved")
                : words.say(
                        report.signedAs(ReportRole.VERIFIED).isPresent()
                                ? "report.signed.verified"
                                : "report.signed.not-yet");
        return words.say(
                "report.row.line", words.say("report.extent", report.asked().extent()), signed);
    }

    /** What is said where there is no row. */
    public String none() {
        return words.say(reports.get().isPresent() ? "report.none" : "home.no-runs.not-yet");
    }

    public void open(KeptReport report) {
        navigator.articleReport(report.asked().identifier());
    }

    /** Begins another, with the part it is on. */
    public void another() {
        navigator.newReport();
    }
}
