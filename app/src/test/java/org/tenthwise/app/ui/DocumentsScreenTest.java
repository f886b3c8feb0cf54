package org.tenthwise.app.ui;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.ProvenElsewhere;
import org.tenthwise.app.device.FilesInFolders;
import org.tenthwise.app.drafting.FiguresText;
import org.tenthwise.app.session.FiguresReport;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.documents.DocumentsView;
import org.tenthwise.app.ui.documents.DocumentsViewModel;
import org.tenthwise.app.ui.documents.FiguresChoiceViewModel;
import org.tenthwise.app.ui.documents.FiguresView;
import org.tenthwise.app.ui.documents.FiguresViewModel;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.more.MoreView;
import org.tenthwise.app.ui.more.MoreViewModel;
import org.tenthwise.app.ui.record.RecordView;
import org.tenthwise.app.ui.record.RecordViewModel;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.SignedAs;

/** What documents prove of a run, and the ways that lead there, on every display. */
class DocumentsScreenTest extends ScreenTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    @TempDir
    private Path folder;

    /** Figures of 41 out, of 42 inside; the certificate there, the report of the process not yet. */
    private RunSession some() {
        RunSession session = workshop.begin(ProvenElsewhere.PLAN, "014");
        give(session, 41, "CM-118", Document.Says.FIGURES, "Setter 3", "0.021", "0.062");
        give(session, 42, "CM-118", Document.Says.FIGURES, "Setter 3", "0.021", "0.030");
        give(session, 71, "HT-4711", Document.Says.CONFORMS, "Invented Alloys");
        give(session, 72, "", Document.Says.NOT_YET, "Setter 3");
        return session;
    }

    private static void give(
            RunSession session, int step, String number, Document.Says says, String by, String... figures) {
        Workshop.must(() -> {
            session.goTo(step);
            return session.documents()
                    .give(
                            number,
                            LocalDate.parse("2026-11-20"),
                            says,
                            by,
                            Stream.of(figures)
                                    .map(figure -> new Written(figure, Unit.MILLIMETRE))
                                    .toList());
        });
    }

    private Screen documents(Window window, RunSession session) {
        DocumentsViewModel model = new DocumentsViewModel(session, workshop.tasks, words, workshop);
        return new DocumentsView(model, words, window.pictures(), workshop);
    }

    @Test
    void whatIsStillToComeHoldsEverywhere() {
        RunSession session = some();
        seen("documents", "open", window -> documents(window, session));
    }

    @Test
    void whatIsThereHoldsEverywhere() {
        RunSession session = some();
        for (int step = 43; step <= 60; step++) {
            give(session, step, "CM-" + step, Document.Says.CONFORMS, "Setter 3");
        }
        seen("documents", "mostly-there", window -> documents(window, session));
    }

    @Test
    void aTableOfFiguresHoldsEverywhere() {
        RunSession session = some();
        Workshop.must(() -> Files.writeString(folder.resolve("CM-118.csv"), "balloon,value"));
        seen("documents", "figures-choice", window -> {
            FiguresChoiceViewModel model = new FiguresChoiceViewModel(
                    workshop.inHand(session),
                    new FilesInFolders(List.of(folder), FiguresText.ENDING),
                    words,
                    workshop,
                    Workshop.CLOCK);
            return FormView.titled(words.say("documents.file"), model.form(), words, workshop::back, model::load);
        });
        String taken = "balloon,value\n43,0.021\n43,0.030\n44,0.021\n44,0.062\n45,0.050\n45,0.049\n";
        seen("documents", "figures-taken", window -> figures(window, session, taken));
        seen("documents", "figures-refused", window -> figures(window, session, taken + "41,0.020\n41,0.020\n"));
        seen(
                "documents",
                "figures-not-read",
                window -> figures(window, session, "serial,balloon,value\n013,43,0.021\n014,43,0,020\n"));
    }

    private Screen figures(Window window, RunSession session, String text) {
        Path file = Workshop.must(() -> Files.writeString(folder.resolve("CM-118.csv"), text));
        FiguresViewModel model = new FiguresViewModel(
                session,
                file,
                new FiguresReport("CM-118", LocalDate.parse("2026-11-20"), "Setter 3"),
                workshop.tasks,
                words,
                workshop,
                Workshop.CLOCK);
        return new FiguresView(model, words, window.pictures(), workshop);
    }

    @Test
    void moreAndRecordLeadThere() {
        RunSession session = some();
        seen(
                "documents",
                "from-more",
                window -> new MoreView(
                        new MoreViewModel(session, session.state(), workshop.tasks, workshop, words),
                        words,
                        window.pictures()));
        seen("documents", "from-open-record", window -> record(window, session));
        Workshop.must(() -> session.close("Setter 2", SignedAs.MACHINED_AND_MEASURED));
        seen("documents", "from-closed-record", window -> record(window, session));
    }

    private Screen record(Window window, RunSession session) {
        return new RecordView(
                new RecordViewModel(
                        session.id(),
                        workshop.shop,
                        Workshop.handout(),
                        workshop.tasks,
                        words,
                        workshop,
                        Workshop.CLOCK),
                words,
                window.pictures(),
                workshop);
    }
}
