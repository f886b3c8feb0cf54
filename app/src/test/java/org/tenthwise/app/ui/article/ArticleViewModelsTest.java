package org.tenthwise.app.ui.article;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.command.Replayed;
import org.tenthwise.app.firstarticle.ArticleReport;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.model.run.ReportAsked;
import org.tenthwise.model.run.ReportRole;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.words.Words;

/** From the part to the signature, without a screen. */
class ArticleViewModelsTest {

    private static final ExamplePart PIN = ExamplePart.GATE_ROLLER_PIN;
    private static final String PART = "GR-341";

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private String run(String serial, String readings) {
        RunSession session = workshop.begin(PIN.plan(), serial);
        Workshop.must(() -> {
            Replayed.play(session, PIN, readings);
            return session.close("Setter 2", SignedAs.MACHINED_AND_MEASURED);
        });
        return session.id();
    }

    private AskReportViewModel asking(String... runs) {
        AskReportViewModel model = new AskReportViewModel(
                PART, List.of(runs), List.of("Setter 2"), workshop.articles(), workshop.tasks, Words.ENGLISH, workshop);
        model.load();
        return model;
    }

    private static Field<?> field(AskReportViewModel model, String id) {
        return model.form().fields().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static void type(AskReportViewModel model, String id, String text) {
        model.form().goTo(field(model, id));
        text.codePoints().mapToObj(Character::toString).forEach(model.form()::character);
    }

    @SuppressWarnings("unchecked")
    private static <T> void choose(AskReportViewModel model, String id, T choice) {
        ((Field<T>) field(model, id)).choice().choose(choice);
    }

    /** Fills in what is needed and draws the report up. */
    private void drawUp(AskReportViewModel model, String identifier) {
        type(model, "identifier", identifier);
        choose(model, "edition", ReportAsked.Edition.C);
        choose(model, "extent", ReportAsked.Extent.FULL);
        type(model, "reason", "first run");
        type(model, "organization", "Invented works");
        type(model, "route", "R-1");
        type(model, "who", "Planner 1");
        for (int i = 0; i < model.form().fields().size(); i++) {
            model.form().goOn();
        }
    }

    private ReportViewModel report(String identifier) {
        ReportViewModel model =
                new ReportViewModel(identifier, workshop.articles(), workshop.tasks, Words.ENGLISH, workshop);
        model.load();
        return model;
    }

    private void sign(String identifier, ReportRole role, String name) {
        workshop.told.clear();
        workshop.tasks.run(() -> workshop.articles().sign(identifier, role, name), report -> {});
    }

    private String told() {
        return workshop.told.isEmpty() ? "" : workshop.told.get(0).words();
    }

    @Test
    void aReportIsDrawnUpSignedByTwoAndWritten() throws Exception {
        String run = run("014", PIN.passingReadings());
        drawUp(asking(run), "F-1");
        assertEquals(List.of(), workshop.told);
        assertTrue(workshop.asked.contains("report F-1"), workshop.asked::toString);
        ReportViewModel model = report("F-1");
        ArticleReport report = model.reportProperty().get().orElseThrow();
        assertEquals("Complete", model.state(report));
        assertEquals(List.of(), model.said(report));
        sign("F-1", ReportRole.APPROVED, "Quality lead");
        assertTrue(told().startsWith("Nobody has signed yet that report F-1 is verified"), told());
        sign("F-1", ReportRole.VERIFIED, "Inspector 1");
        sign("F-1", ReportRole.APPROVED, "inspector 1");
        assertTrue(told().startsWith("inspector 1 has verified the report"), told());
        sign("F-1", ReportRole.APPROVED, "Quality lead");
        assertEquals("", told());
        model.write("form-3.csv");
        Path file = Path.of(model.writtenProperty().get().replaceAll("Folder: (.*)\\. File: (.*)", "$1/$2"));
        assertTrue(Files.readString(file).startsWith("5 Char. no.,"), file::toString);
    }

    /** What is entered later is in no report that was drawn up before, and what was signed holds for that alone. */
    @Test
    void whatIsEnteredLaterIsSaidAndMustBeDrawnUpAgain() {
        String run = run("014", PIN.passingReadings());
        drawUp(asking(run), "F-1");
        sign("F-1", ReportRole.VERIFIED, "Inspector 1");
        Workshop.must(() -> workshop.shop.open(run).note("seen later"));
        ReportViewModel model = report("F-1");
        assertTrue(model.said(model.reportProperty().get().orElseThrow())
                .get(0)
                .startsWith("Something was entered in " + run));
        sign("F-1", ReportRole.APPROVED, "Quality lead");
        assertTrue(told().contains("draw it up again"), told());
        drawUp(asking(run), "F-1");
        ArticleReport again = report("F-1").reportProperty().get().orElseThrow();
        assertEquals(List.of(), again.movedOn());
        assertTrue(again.kept().orElseThrow().signed().isEmpty());
    }

    @Test
    void nobodyVerifiesWhatIsNotAccountedFor() {
        String run = run("015", PIN.failingReadings());
        drawUp(asking(run), "F-1");
        ReportViewModel model = report("F-1");
        ArticleReport report = model.reportProperty().get().orElseThrow();
        assertEquals("Not complete", model.state(report));
        assertFalse(model.said(report).isEmpty());
        sign("F-1", ReportRole.VERIFIED, "Inspector 1");
        assertTrue(told().startsWith("Nobody can sign yet that all is accounted for."), told());
    }

    @Test
    void whatEarlierReportsSayLiesReadyAndIsChosenByNobody() {
        String run = run("014", PIN.passingReadings());
        drawUp(asking(run), "F-1");
        AskReportViewModel next = asking(run);
        assertEquals("GR-341-FAIR-2", field(next, "identifier").reads());
        assertEquals("", field(next, "organization").reads());
        assertEquals(
                List.of("Invented works"),
                field(next, "organization").choice().offeredProperty().get());
        assertFalse(field(next, "baseline").askedProperty().get());
        choose(next, "extent", ReportAsked.Extent.PARTIAL);
        assertTrue(field(next, "baseline").askedProperty().get());
        assertEquals(
                List.of("GR-341 rev A, F-1"),
                field(next, "baseline").choice().offeredProperty().get());
    }

    @Test
    void runsAreTickedAndJoinedInTheOrderTheyWereBegun() {
        String first = run("014", PIN.passingReadings());
        String second = run("015", PIN.passingReadings());
        ReportRunsViewModel model =
                new ReportRunsViewModel(PART, workshop.articles(), workshop.tasks, Words.ENGLISH, workshop);
        model.load();
        assertFalse(model.canGoOn());
        model.runsProperty().get().forEach(model::touch);
        model.goOn();
        assertEquals(
                "ask report GR-341 [%s, %s]".formatted(first, second), workshop.asked.get(workshop.asked.size() - 1));
    }
}
