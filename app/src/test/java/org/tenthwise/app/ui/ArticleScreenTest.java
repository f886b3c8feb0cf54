package org.tenthwise.app.ui;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.command.Replayed;
import org.tenthwise.app.firstarticle.ReportShelf;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.article.AskReportViewModel;
import org.tenthwise.app.ui.article.JoinedRuns;
import org.tenthwise.app.ui.article.ReportPartViewModel;
import org.tenthwise.app.ui.article.ReportRunsView;
import org.tenthwise.app.ui.article.ReportRunsViewModel;
import org.tenthwise.app.ui.article.ReportView;
import org.tenthwise.app.ui.article.ReportViewModel;
import org.tenthwise.app.ui.article.ReportsView;
import org.tenthwise.app.ui.article.ReportsViewModel;
import org.tenthwise.app.ui.article.SignReportViewModel;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.model.run.ReportAsked;
import org.tenthwise.model.run.ReportRole;
import org.tenthwise.model.run.SignedAs;

/** First-article reports, from the list of them to the signature, on every display. */
class ArticleScreenTest extends ScreenTest {

    private static final ExamplePart PIN = ExamplePart.GATE_ROLLER_PIN;
    private static final String PART = "GR-341";

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    /** A closed run of the pin. */
    private String run(String serial, String readings) {
        RunSession session = workshop.begin(PIN.plan(), serial);
        Workshop.must(() -> {
            Replayed.play(session, PIN, readings);
            return session.close("Setter 2", SignedAs.MACHINED_AND_MEASURED);
        });
        return session.id();
    }

    private void drawnUp(String identifier, String... runs) {
        Workshop.must(() -> workshop.articles()
                .drawUp(
                        new ReportAsked(
                                identifier,
                                PIN.plan().part(),
                                ReportAsked.Edition.C,
                                ReportAsked.Extent.FULL,
                                "first run",
                                "",
                                List.of(),
                                "PO-1",
                                "Invented lock works",
                                "S-209",
                                "R-31",
                                List.of(),
                                false,
                                ""),
                        List.of(runs),
                        "Planner 1"));
    }

    private Screen reports(Window window) {
        return new ReportsView(
                new ReportsViewModel(workshop.articles(), workshop.tasks, words, workshop), words, workshop);
    }

    private Screen report(Window window, String identifier) {
        return new ReportView(
                new ReportViewModel(identifier, workshop.articles(), workshop.tasks, words, workshop),
                words,
                window.pictures(),
                workshop);
    }

    @Test
    void theReportsThereAreHoldEverywhere() {
        seen("article", "none", this::reports);
        seen("article", "no-runs", window -> runs(window, List.of()));
        String run = run("014", PIN.passingReadings());
        Stream.of("F-1", "F-2", "F-3").forEach(identifier -> drawnUp(identifier, run));
        sign("F-2", ReportRole.VERIFIED, "Inspector 1");
        sign("F-3", ReportRole.VERIFIED, "Inspector 1");
        sign("F-3", ReportRole.APPROVED, "Quality lead");
        seen("article", "reports", this::reports);
        seen("article", "complete", window -> report(window, "F-3"));
        seen("article", "part", window -> {
            ReportPartViewModel model = new ReportPartViewModel(workshop.articles(), workshop.tasks, words, workshop);
            return FormView.titled(words.say("report.another"), model.form(), words, workshop::back, model::load);
        });
        seen("article", "sign", window -> {
            SignReportViewModel model = new SignReportViewModel(
                    "F-1", List.of("Setter 2", "Inspector 1"), workshop.articles(), workshop.tasks, words, workshop);
            return FormView.titled(words.say("sign.title"), model.form(), words, workshop::back, model::load);
        });
    }

    private void sign(String identifier, ReportRole role, String name) {
        Workshop.must(() -> workshop.articles().sign(identifier, role, name));
    }

    @Test
    void runsAndWhatIsAskedHoldEverywhere() {
        String first = run("014", PIN.passingReadings());
        String second = run("015", PIN.failingReadings());
        seen("article", "runs", window -> runs(window, List.of(second)));
        seen("article", "ask", window -> ask(first, ReportAsked.Extent.FULL));
        seen("article", "ask-partial", window -> ask(first, ReportAsked.Extent.PARTIAL));
        drawnUp("F-1", first, second);
        seen("article", "not-complete", window -> report(window, "F-1"));
        Workshop.must(() -> workshop.shop.open(first).note("A burr was found later"));
        seen("article", "moved-on", window -> report(window, "F-1"));
    }

    private Screen runs(Window window, List<String> ticked) {
        ReportRunsViewModel model = new ReportRunsViewModel(PART, workshop.articles(), workshop.tasks, words, workshop);
        model.load();
        model.runsProperty().get().stream()
                .filter(run -> ticked.contains(run.id()))
                .forEach(model::touch);
        return new ReportRunsView(model, words, workshop);
    }

    private Screen ask(String run, ReportAsked.Extent extent) {
        ReportShelf shelf = workshop.articles();
        AskReportViewModel model =
                new AskReportViewModel(PART, List.of(run), List.of("Setter 2"), shelf, workshop.tasks, words, workshop);
        model.load();
        model.form().fields().stream()
                .filter(field -> field.id().equals("extent"))
                .findFirst()
                .ifPresent(field -> choose(field, extent));
        return FormView.titled(words.say("report.another"), model.form(), words, workshop::back, model::load)
                .about(new JoinedRuns(model));
    }

    @SuppressWarnings("unchecked")
    private static void choose(Field<?> field, ReportAsked.Extent extent) {
        ((Field<ReportAsked.Extent>) field).choice().choose(extent);
    }
}
