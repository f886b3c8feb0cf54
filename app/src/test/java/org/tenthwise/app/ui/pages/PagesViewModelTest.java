package org.tenthwise.app.ui.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.device.AskedViewer;
import org.tenthwise.app.export.CsvRecord;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.export.pdf.PagePicture;
import org.tenthwise.app.export.pdf.Paper;
import org.tenthwise.app.export.pdf.RecordLayout;
import org.tenthwise.app.export.pdf.Scene;
import org.tenthwise.app.handout.Handout;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.pages.PagesState.Shown;
import org.tenthwise.model.words.Words;

/** Leafing through the pages of a record. */
class PagesViewModelTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private final List<PagePicture> pages =
            new RecordLayout(Words.ENGLISH, Paper.A4, Records.DATA).pages(Scene.FAILED.evidence());

    private PagesViewModel model() {
        PagesViewModel model = new PagesViewModel(
                "LG-2207-C-014",
                new Handout(
                        List.of(new CsvRecord()),
                        (run, as) -> Path.of(run),
                        scope -> Optional.empty(),
                        run -> pages,
                        AskedViewer.none()),
                workshop.tasks,
                Words.ENGLISH);
        model.room(1256, 600);
        return model;
    }

    private static Shown shown(PagesViewModel model) {
        return assertInstanceOf(Shown.class, model.stateProperty().get());
    }

    @Test
    void beforeItIsLaidOutThatIsSaid() {
        assertEquals(
                new PagesState.Waiting("The pages are being laid out."),
                model().stateProperty().get());
    }

    @Test
    void everyPageIsComeToAndTheWayBackTheSame() {
        PagesViewModel model = model();
        model.load();
        assertEquals("Page 1 of " + pages.size(), shown(model).said());
        assertTrue(!shown(model).before());
        int turns = turn(model);
        assertEquals(pages.size() - 1, turns);
        assertEquals(
                "Page " + pages.size() + " of " + pages.size(), shown(model).said());
        model.next();
        assertEquals(
                "Page " + pages.size() + " of " + pages.size(), shown(model).said());
        while (shown(model).before()) {
            model.previous();
            turns--;
        }
        assertEquals(0, turns);
        assertEquals("Page 1 of " + pages.size(), shown(model).said());
    }

    @Test
    void largerEveryPartOfEveryPageIsComeTo() {
        PagesViewModel model = model();
        model.load();
        model.changeSize();
        int parts = pages.stream().mapToInt(page -> page.parts(1256, 600)).sum();
        assertTrue(parts > 2 * pages.size(), () -> parts + " parts");
        assertEquals(parts - 1, turn(model));
        model.changeSize();
        assertEquals(
                "Page " + pages.size() + " of " + pages.size(), shown(model).said());
        assertEquals("Larger", shown(model).size());
    }

    /** The tablet is turned: upright a page has fewer parts, and the one in hand is one of them. */
    @Test
    void inAnotherRoomThePartInHandIsOneThereIs() {
        PagesViewModel model = model();
        model.load();
        model.changeSize();
        model.next();
        model.next();
        model.room(776, 1060);
        assertEquals("Page 1 of " + pages.size(), shown(model).said());
        model.next();
        model.next();
        assertEquals("Page 2 of " + pages.size(), shown(model).said());
    }

    private static int turn(PagesViewModel model) {
        int turns = 0;
        while (shown(model).after()) {
            model.next();
            turns++;
        }
        return turns;
    }
}
