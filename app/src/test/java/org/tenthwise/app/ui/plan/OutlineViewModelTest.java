package org.tenthwise.app.ui.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.plan.OutlineViewModel.ElementDeed;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.editing.OutlineText.Side;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.model.words.Words;

class OutlineViewModelTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    @TempDir
    Path folder;

    private static PlanInHand carrier() {
        return new PlanInHand(PlanText.of(DemoPart.SCREW_CARRIER.planText()).orElseThrow());
    }

    private static PlanInHand empty() {
        return new PlanInHand(PlanText.of(
                        """
                        format = 1
                        unit = "in"

                        [[operation]]
                        number = 10
                        name = "First"
                        """)
                .orElseThrow());
    }

    private OutlineViewModel model(PlanInHand plan) {
        return new OutlineViewModel("LG-2207-C", plan, new PlanDesk(folder), workshop.tasks, Words.ENGLISH, workshop);
    }

    private ElementViewModel element(PlanInHand plan, Side side, int place, boolean isNew) {
        return new ElementViewModel(plan, side, place, isNew, Words.ENGLISH, workshop);
    }

    private static void type(ElementViewModel model, int place, String text) {
        model.form().goTo(model.form().fields().get(place));
        while (!model.form().fields().get(place).reads().isEmpty()) {
            model.form().takeBack();
        }
        model.form().character(text);
    }

    private static String told(ElementViewModel model, int place) {
        return model.form().fields().get(place).aboutProperty().get();
    }

    private static List<String> titles(OutlineViewModel model) {
        return model.rowsProperty().get().stream()
                .map(OutlineViewModel.ElementRow::title)
                .toList();
    }

    @Test
    void theElementsThereAreAreListedFromTheLeftEnd() {
        OutlineViewModel model = model(carrier());
        assertEquals(List.of("Ø40", "Ø70", "Ø48"), titles(model));
        assertEquals("90 mm long", model.rowsProperty().get().get(0).line());
        assertEquals("166 mm long, Ø70 at most.", model.saidProperty().get());
        assertTrue(model.drawnProperty().get().isPresent());
        assertFalse(model.canUndo());
    }

    @Test
    void anElementIsAddedBehindTheOneInHandAndUndoTakesItBack() {
        PlanInHand plan = carrier();
        OutlineViewModel model = model(plan);
        model.take(2);
        model.act(ElementDeed.ADD);
        assertTrue(workshop.asked.contains("new element 3 OUTSIDE"), workshop.asked.toString());
        ElementViewModel added = element(plan, Side.OUTSIDE, 3, true);
        type(added, 0, "44.50");
        assertTrue(added.drawnProperty().get().isPresent());
        type(added, 1, "4");
        added.form().goOn();
        model.load();
        assertEquals(3, model.inHandProperty().get());
        assertTrue(plan.text().text().contains("[104, 48], [166, 48], [166, 44.50], [170, 44.50]]"));
        assertEquals(
                1, plan.plan().orElseThrow().outline().orElseThrow().threads().size());
        assertTrue(model.saidProperty().get().endsWith("look at each again."));
        model.undo();
        assertEquals(DemoPart.SCREW_CARRIER.planText(), plan.text().text());
        assertFalse(model.canUndo());
    }

    @Test
    void anElementIsChangedMovedAndTakenOut() {
        PlanInHand plan = carrier();
        OutlineViewModel model = model(plan);
        model.take(1);
        ElementViewModel changed = element(plan, Side.OUTSIDE, 1, false);
        assertEquals("70", changed.form().fields().get(0).reads());
        type(changed, 2, "60");
        changed.form().goOn();
        model.load();
        assertEquals(List.of("Ø40", "Ø70 to Ø60", "Ø48"), titles(model));
        model.act(ElementDeed.LEFT);
        assertEquals(List.of("Ø70 to Ø60", "Ø40", "Ø48"), titles(model));
        assertEquals(0, model.inHandProperty().get());
        assertFalse(model.can(ElementDeed.LEFT));
        model.act(ElementDeed.TAKE_OUT);
        assertEquals(List.of("Ø40", "Ø48"), titles(model));
        for (int i = 0; i < 3; i++) {
            model.undo();
        }
        assertEquals(DemoPart.SCREW_CARRIER.planText(), plan.text().text());
    }

    @Test
    void aPlanWithoutOneGetsOneAndASolidPartHasNoInside() {
        PlanInHand plan = empty();
        OutlineViewModel model = model(plan);
        assertEquals(Optional.empty(), model.drawnProperty().get());
        assertFalse(model.can(ElementDeed.CHANGE));
        model.turnTo(Side.INSIDE);
        assertFalse(model.can(ElementDeed.ADD), "an inside without an outside");
        ElementViewModel first = element(plan, Side.OUTSIDE, 0, true);
        type(first, 0, "1.5");
        type(first, 1, "2.250");
        assertTrue(first.drawnProperty().get().isPresent());
        first.form().goOn();
        model.load();
        assertTrue(plan.text().text().contains("[outline]\noutside = [[0, 1.5], [2.250, 1.5]]\n"));
        assertTrue(plan.text().text().indexOf("[outline]") < plan.text().text().indexOf("[[operation]]"));
        assertFalse(plan.text().text().contains("inside"));
        model.turnTo(Side.OUTSIDE);
        assertFalse(model.can(ElementDeed.TAKE_OUT), "a part without an outside is none");
    }

    @Test
    void aFigureThatCannotBeIsRefusedInWordsAsSoonAsItIsTyped() {
        for (String wrong : List.of("x", "-4", "9,0", "1e3", "4 5", ".")) {
            PlanInHand plan = carrier();
            ElementViewModel model = element(plan, Side.OUTSIDE, 0, false);
            type(model, 0, wrong);
            assertEquals("A figure with a point, like 40 or 40.05.", told(model, 0), wrong);
            model.form().goOn();
            assertEquals(DemoPart.SCREW_CARRIER.planText(), plan.text().text(), wrong);
            type(model, 0, "40.05");
            assertEquals("", told(model, 0));
        }
        PlanInHand plan = carrier();
        ElementViewModel model = element(plan, Side.OUTSIDE, 0, false);
        type(model, 1, "0.000");
        assertEquals("A length is above 0.", told(model, 1));
        type(model, 1, "90");
        type(model, 0, "0");
        model.form().goOn();
        assertEquals("Outside, a diameter is above 0.", told(model, 0));
        assertEquals(DemoPart.SCREW_CARRIER.planText(), plan.text().text());
    }

    @Test
    void anInsideThatLeavesNoWallIsSaid() {
        PlanInHand plan = carrier();
        OutlineViewModel model = model(plan);
        model.turnTo(Side.INSIDE);
        model.take(0);
        ElementViewModel bore = element(plan, Side.INSIDE, 0, false);
        type(bore, 0, "40");
        bore.form().goOn();
        model.load();
        assertTrue(
                model.saidProperty().get().contains("leaves no wall"),
                model.saidProperty().get());
    }

    @Test
    void aSecondPressOnTakeOutDoesNotEmptyTheOutside() {
        OutlineViewModel model = model(carrier());
        for (int i = 0; i < 5; i++) {
            model.act(ElementDeed.TAKE_OUT);
        }
        assertEquals(1, model.rowsProperty().get().size());
    }

    @Test
    void whatIsMovedIsKeptAsADraftAtOnceAndSoIsWhatIsTakenBack() throws IOException {
        PlanInHand plan = carrier();
        OutlineViewModel model = model(plan);
        model.act(ElementDeed.RIGHT);
        assertEquals(List.of("Ø70", "Ø40", "Ø48"), titles(model));
        assertEquals(plan.text().text(), kept());
        model.undo();
        assertEquals(DemoPart.SCREW_CARRIER.planText(), kept());
    }

    private String kept() throws IOException {
        return new PlanDesk(folder).open("LG-2207-C").orElseThrow().text();
    }
}
