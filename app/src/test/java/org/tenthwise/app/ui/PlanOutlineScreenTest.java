package org.tenthwise.app.ui;

import org.junit.jupiter.api.Test;
import org.tenthwise.app.ui.plan.ElementView;
import org.tenthwise.app.ui.plan.ElementViewModel;
import org.tenthwise.app.ui.plan.MarksView;
import org.tenthwise.app.ui.plan.MarksViewModel;
import org.tenthwise.app.ui.plan.OutlineView;
import org.tenthwise.app.ui.plan.OutlineViewModel;
import org.tenthwise.checklists.editing.OutlineText.Side;
import org.tenthwise.checklists.editing.PlanInHand;

/** The outline of a plan and the spots on it, on every display. */
class PlanOutlineScreenTest extends PlansAtHand {

    @Test
    void theOutlineHoldsEverywhere() {
        seen(
                "plan",
                "outline",
                window -> new OutlineView(
                        new OutlineViewModel(
                                "LG-2207-C", new PlanInHand(carrier()), desk(), workshop.tasks, words, workshop),
                        words,
                        window.pictures(),
                        workshop));
    }

    @Test
    void anElementOfTheOutlineHoldsEverywhere() {
        ElementViewModel model =
                new ElementViewModel(new PlanInHand(carrier()), Side.OUTSIDE, 1, false, words, workshop);
        seen("plan", "element", window -> new ElementView(model, words, window.pictures(), workshop), window -> {
            model.form().goTo(model.form().fields().get(2));
            model.form().character("5,5");
        });
    }

    @Test
    void theSpotsOnTheOutlineHoldEverywhere() {
        seen(
                "plan",
                "marks",
                window -> new MarksView(
                        new MarksViewModel(
                                "LG-2207-C", new PlanInHand(carrier()), 9, desk(), workshop.tasks, words, workshop),
                        words,
                        window.pictures(),
                        workshop));
    }
}
