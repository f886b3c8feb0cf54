package org.tenthwise.app.ui.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.model.words.Words;

class OutlineViewModelTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private static PlanInHand carrier() {
        return new PlanInHand(PlanText.of(DemoPart.SCREW_CARRIER.planText()).orElseThrow());
    }

    private OutlineViewModel model(PlanInHand plan) {
        return new OutlineViewModel(plan, Words.ENGLISH, workshop);
    }

    private static void type(OutlineViewModel model, int place, String text) {
        Field<?> field = model.form().fields().get(place);
        model.form().goTo(field);
        while (!field.reads().isEmpty()) {
            field.typing().orElseThrow().takeBack();
        }
        model.form().character(text);
    }

    private static void keep(OutlineViewModel model) {
        model.form().goTo(model.form().fields().get(1));
        model.form().goOn();
    }

    @Test
    void theOutlineThereIsStandsReadyAndKeptAsItIsChangesNothing() {
        PlanInHand plan = carrier();
        OutlineViewModel model = model(plan);
        assertEquals(
                "0 40; 90 40; 90 70; 104 70; 104 48; 166 48",
                model.form().fields().get(0).reads());
        assertTrue(model.drawnProperty().get().isPresent());
        keep(model);
        assertEquals(DemoPart.SCREW_CARRIER.planText(), plan.text().text());
        assertFalse(plan.canUndo());
    }

    @Test
    void aNewPointIsDrawnAndWrittenAndUndoTakesItBack() {
        PlanInHand plan = carrier();
        OutlineViewModel model = model(plan);
        model.form().goTo(model.form().fields().get(0));
        model.form().character("; 170 44.50");
        assertTrue(model.drawnProperty().get().isPresent());
        keep(model);
        assertTrue(plan.text().text().contains("[104, 48], [166, 48], [170, 44.50]]"));
        assertEquals(
                4, plan.plan().orElseThrow().outline().orElseThrow().inside().size() - 2);
        assertEquals(
                1, plan.plan().orElseThrow().outline().orElseThrow().threads().size());
        plan.undo();
        assertEquals(DemoPart.SCREW_CARRIER.planText(), plan.text().text());
    }

    @Test
    void aPlanWithoutOneGetsOneAndASolidPartHasNoInside() {
        PlanInHand plan = new PlanInHand(PlanText.of(
                        """
                        format = 1
                        unit = "in"

                        [[operation]]
                        number = 10
                        name = "First"
                        """)
                .orElseThrow());
        OutlineViewModel model = model(plan);
        assertEquals(Optional.empty(), model.drawnProperty().get());
        type(model, 0, "0 1.5; 2.250 1.5");
        assertTrue(model.drawnProperty().get().isPresent());
        keep(model);
        assertTrue(plan.text().text().contains("[outline]\noutside = [[0, 1.5], [2.250, 1.5]]\n"));
        assertTrue(plan.text().text().indexOf("[outline]") < plan.text().text().indexOf("[[operation]]"));
        assertFalse(plan.text().text().contains("inside"));
    }

    @Test
    void whatIsNoProfileIsNeitherDrawnNorKept() {
        for (String wrong : List.of("0 40; 90", "0 40 5; 90 40", "0 40; x 40", "0 40; 90 -40", "0 40; 9,0 40")) {
            PlanInHand plan = carrier();
            OutlineViewModel model = model(plan);
            type(model, 0, wrong);
            assertEquals(Optional.empty(), model.drawnProperty().get(), wrong);
            keep(model);
            assertEquals(DemoPart.SCREW_CARRIER.planText(), plan.text().text(), wrong);
        }
    }

    @Test
    void aProfileThatGoesBackIsNotDrawnAndIsOpenInThePlan() {
        PlanInHand plan = carrier();
        OutlineViewModel model = model(plan);
        type(model, 0, "0 40; 90 40; 80 70; 166 48");
        assertEquals(Optional.empty(), model.drawnProperty().get());
        keep(model);
        assertFalse(plan.open().isEmpty());
    }
}
