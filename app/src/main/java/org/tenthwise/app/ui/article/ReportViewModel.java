package org.tenthwise.app.ui.article;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.tenthwise.app.firstarticle.ArticleReport;
import org.tenthwise.app.firstarticle.CharacteristicForm;
import org.tenthwise.app.firstarticle.ReportShelf;
import org.tenthwise.app.firstarticle.ReportWords;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.firstarticle.FirstArticle;
import org.tenthwise.model.firstarticle.ReportLine;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** What a report comes to: whether it is complete and why not, its characteristics, and the ways out. */
public final class ReportViewModel {

    /** A characteristic in the list. */
    public record FoundRow(String number, String requirement, String results, VerdictKind standing, String verdict) {}

    private final String identifier;
    private final ReportShelf shelf;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final ReadOnlyObjectWrapper<Optional<ArticleReport>> report = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper written = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper(false);

    public ReportViewModel(String identifier, ReportShelf shelf, LedgerTasks tasks, Words words, Navigator navigator) {
        this.identifier = identifier;
        this.shelf = shelf;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
    }

    public void load() {
        tasks.run(() -> shelf.report(identifier), found -> report.set(Optional.of(found)));
    }

    /** Absent until it was made again. */
    public ReadOnlyObjectProperty<Optional<ArticleReport>> reportProperty() {
        return report.getReadOnlyProperty();
    }

    /** Where the last file lies; empty before one was written. */
    public ReadOnlyStringProperty writtenProperty() {
        return written.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    public String title() {
        return words.say("report.titled", identifier);
    }

    /** "Complete", or "Not complete". */
    public String state(ArticleReport of) {
        return new ReportWords(words).state(of.article());
    }

    /** Why it is not complete, and what should be known besides, a sentence each. */
    public List<String> said(ArticleReport of) {
        ReportWords says = new ReportWords(words);
        List<String> said = new ArrayList<>();
        if (!of.movedOn().isEmpty()) {
            said.add(words.say("report.moved-on", of.movedOn()));
        }
        said.addAll(says.open(of.article()));
        said.addAll(says.notes(of.article()));
        return said;
    }

    /** Which part, how much of it and of which runs; who signed; what it is not. */
    public List<String> facts(ArticleReport of) {
        ReportWords says = new ReportWords(words);
        FirstArticle article = of.article();
        return List.of(
                words.say("report.extent", article.asked().extent()),
                says.arranged(article),
                words.say(
                        "report.on-serials",
                        words.say(
                                "ask.part-revision",
                                article.asked().part().number(),
                                article.asked().part().revision()),
                        article.serials()),
                says.signed(of),
                says.noRelease());
    }

    public List<FoundRow> rows(ArticleReport of) {
        CharacteristicForm form = new CharacteristicForm(of.article(), words);
        return of.article().characteristics().stream()
                .map(one -> row(form, one))
                .toList();
    }

    private FoundRow row(CharacteristicForm form, ReportLine one) {
        VerdictKind standing =
                switch (one.standing()) {
                    case CONFORMS -> VerdictKind.PASS;
                    case DOES_NOT_CONFORM -> VerdictKind.FAIL;
                    case UNPROVEN -> VerdictKind.UNPROVEN;
                    case OPEN -> VerdictKind.OPEN;
                };
        return new FoundRow(
                one.number().map(Object::toString).orElse(""),
                form.requirement(one),
                form.results(one),
                standing,
                words.say("report.standing", one.standing()));
    }

    /** What its files can be asked for by. */
    public List<String> formats() {
        return shelf.formats();
    }

    public void write(String format) {
        if (!busy.get()) {
            busy.set(true);
            tasks.run(() -> shelf.write(identifier, format), this::written, () -> busy.set(false));
        }
    }

    private void written(Path file) {
        written.set(words.say("sheet.written", file.getParent(), file.getFileName()));
    }

    public void sign() {
        navigator.signReport(identifier);
    }
}
