package org.tenthwise.app.ui.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.model.words.Words;

class MarksViewModelTest {

    private static final Frame FRAME = Frame.screen(900, 400, 1);

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    @TempDir
    Path folder;

    private final PlanInHand plan =
            new PlanInHand(PlanText.of(DemoPart.SCREW_CARRIER.planText()).orElseThrow());

    private MarksViewModel model(PlanInHand of, int place) {
        return new MarksViewModel(
                "LG-2207-C", of, place, new PlanDesk(folder), workshop.tasks, Words.ENGLISH, workshop);
    }

    private Optional<String> at(int place) {
        return plan.steps().get(place).value("at");
    }

    /** The flange is 90 to 104 of 166 and has a hole in its middle, below its rim. */
    @Test
    void aTouchOnTheFlangePutsTheCheckOnItAndIsKept() throws IOException {
        MarksViewModel model = model(plan, 6);
        model.touch(FRAME, new Point(12 + 876 * 92 / 166.0, 16));
        assertEquals(Optional.of("[97, 70]"), at(6));
        assertEquals("at 97 mm, Ø70", model.rowsProperty().get().get(6).line());
        assertTrue(model.toDoProperty().get().startsWith("It has its spot."));
        assertEquals(
                plan.text().text(),
                new PlanDesk(folder).open("LG-2207-C").orElseThrow().text());
        assertEquals(6, model.inHandProperty().get(), "a second tap moves the same check");
    }

    @Test
    void undoTakesItBackAndItsCheckIsInHand() {
        MarksViewModel model = model(plan, 6);
        model.touch(FRAME, new Point(12 + 876 * 97 / 166.0, 16));
        model.take(0);
        model.undo();
        assertEquals(DemoPart.SCREW_CARRIER.planText(), plan.text().text());
        assertEquals(6, model.inHandProperty().get());
        assertFalse(model.canUndo());
    }

    @Test
    void aTouchBesideThePartDoesNothing() {
        MarksViewModel model = model(plan, 6);
        model.touch(FRAME, new Point(450, 5000));
        assertFalse(model.canUndo());
        assertEquals(DemoPart.SCREW_CARRIER.planText(), plan.text().text());
    }

    @Test
    void nextLeadsToACheckThatStandsNowhere() {
        plan.changeStep(9, step -> step.without("at"));
        MarksViewModel model = model(plan, 8);
        assertTrue(model.hasNext());
        model.goOn();
        assertEquals(Optional.empty(), at(model.inHandProperty().get()));
    }

    @Test
    void withoutAnOutlineNothingIsTouched() {
        PlanInHand bare =
                new PlanInHand(PlanText.of("format = 1\nunit = \"mm\"\n\n[[step]]\nnumber = 1\nname = \"Bore\"\n")
                        .orElseThrow());
        MarksViewModel model = model(bare, 0);
        assertFalse(model.canTouch());
        assertFalse(model.hasNext());
        model.touch(FRAME, new Point(450, 200));
        assertFalse(bare.canUndo());
        assertTrue(model.toDoProperty().get().startsWith("The plan has no outline."));
    }

    @Test
    void figuresBeyondThePartAreRefusedInWords() {
        MarkFiguresViewModel figures = new MarkFiguresViewModel(plan, 6, Words.ENGLISH, workshop);
        type(figures, 0, "166.01");
        assertEquals("The part is 166 mm long.", told(figures, 0));
        figures.form().goTo(figures.form().fields().get(1));
        figures.form().goOn();
        assertEquals(DemoPart.SCREW_CARRIER.planText(), plan.text().text());
        type(figures, 0, "166");
        type(figures, 1, "70.1");
        assertEquals("The part has Ø70 mm at most.", told(figures, 1));
        type(figures, 1, "48");
        figures.form().goOn();
        assertEquals(Optional.of("[166, 48]"), at(6));
    }

    private static void type(MarkFiguresViewModel model, int place, String text) {
        model.form().goTo(model.form().fields().get(place));
        while (!model.form().fields().get(place).reads().isEmpty()) {
            model.form().takeBack();
        }
        model.form().character(text);
    }

    private static String told(MarkFiguresViewModel model, int place) {
        return model.form().fields().get(place).aboutProperty().get();
    }
}
