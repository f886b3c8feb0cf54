package org.tenthwise.app.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import javafx.scene.control.Label;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.drawing.FolderOfDrawings;
import org.tenthwise.app.drawing.InventedDrawing;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.drawing.OnDrawingView;
import org.tenthwise.app.ui.drawing.OnDrawingViewModel;
import org.tenthwise.app.ui.more.MoreView;
import org.tenthwise.app.ui.more.MoreViewModel;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.checklists.editing.TomlValue;
import org.tenthwise.model.plan.Plan;

/** A step of a run with its piece of an invented drawing, on every display. */
class OnDrawingScreenTest extends ScreenTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    @TempDir
    private Path folder;

    @BeforeEach
    void aDrawing() {
        InventedDrawing.in(folder, "0815.pdf");
    }

    /** The screen carrier with the seventh check on a drawing that is none of it. */
    private static Plan plan(String file) {
        PlanInHand plan = new PlanInHand(PlanText.of(DemoPart.SCREW_CARRIER.planText())
                .orElseThrow()
                .withHead(head -> head.with("drawing_file", TomlValue.text(file))));
        plan.changeStep(6, step -> step.with("on_page", "[1, 320, 250]"));
        return plan.plan().orElseThrow();
    }

    private RunSession at(int step, String file) {
        RunSession session = workshop.setUp(plan(file), "014");
        Workshop.must(() -> session.goTo(step));
        return session;
    }

    private Screen screen(RunSession session, Window window) {
        return new OnDrawingView(
                new OnDrawingViewModel(session.state(), new FolderOfDrawings(folder), workshop.tasks, words),
                words,
                window.pictures(),
                workshop);
    }

    @Test
    void thePieceAboutTheBalloonHoldsEverywhere() {
        RunSession session = at(7, "0815.pdf");
        seen("on-drawing", "piece", window -> screen(session, window));
    }

    @Test
    void theWholePageHoldsEverywhere() {
        RunSession session = at(7, "0815.pdf");
        seen("on-drawing", "whole", window -> screen(session, window), window -> press(window.scene(), "page-size"));
    }

    @Test
    void aFileThatIsNotThereIsSaidQuietly() {
        RunSession session = at(7, "0816.pdf");
        run(() -> {
            Window window = window(Display.DAY);
            window.shell().show(screen(session, window));
            settle(window.scene());
            Label why = assertInstanceOf(Label.class, window.scene().lookup("#without-page"));
            assertTrue(shown(why));
            assertEquals(words.say("page.missing", "0816.pdf"), why.getText());
        });
        assertTrue(workshop.told.isEmpty());
    }

    private MoreViewModel more(RunSession session) {
        return new MoreViewModel(session, session.state(), workshop.tasks, workshop, words);
    }

    @Test
    void moreLeadsToItEverywhere() {
        RunSession session = at(7, "0815.pdf");
        seen("more", "on-drawing", window -> new MoreView(more(session), words, window.pictures()));
        more(session).drawing();
        assertEquals("drawing " + session.id(), workshop.asked.get(workshop.asked.size() - 1));
    }

    @Test
    void aStepWithoutAPlaceHasNoKeyToIt() {
        assertTrue(at(7, "0815.pdf").state().isOnDrawing());
        RunSession session = workshop.setUp("015");
        run(() -> {
            Window window = window(Display.DAY);
            window.shell().show(new MoreView(more(session), words, window.pictures()));
            settle(window.scene());
            assertFalse(shown(window.scene().lookup("#on-drawing")));
        });
    }
}
