package org.tenthwise.app.ui;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.session.ShopNames;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.plan.ChangesView;
import org.tenthwise.app.ui.plan.ChangesViewModel;
import org.tenthwise.app.ui.plan.IssueViewModel;
import org.tenthwise.app.ui.plan.OtherPlanViewModel;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.editing.PartialCheck;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;

/** What a draft changes, and why a plan is issued, on every display. */
class PlanIssueScreenTest extends PlansAtHand {

    /** The plan in force, and a draft with another limit, a step less and another name. */
    private ChangesViewModel changes() throws IOException {
        desk().issue(
                        "LG-2207-C",
                        carrier(),
                        new PlanDesk.Why(
                                "First issue",
                                "Planner 1",
                                Optional.empty(),
                                LocalDate.of(2026, 11, 30),
                                Optional.empty()));
        PlanInHand plan = new PlanInHand(desk().open("LG-2207-C").orElseThrow());
        plan.changeStep(9, step -> step.with("lower", "61.96"));
        plan.changeStep(12, step -> step.with("cut_again", "\"no\""));
        plan.changeStep(6, step -> step.with("gauge", "\"CA-2\""));
        return new ChangesViewModel("LG-2207-C", plan, new PartialCheck(), desk(), workshop.tasks, words, workshop);
    }

    @Test
    void whatADraftChangesHoldsEverywhere() throws IOException {
        ChangesViewModel model = changes();
        model.load();
        seen("plan", "changes", window -> new ChangesView(model, words, workshop));
    }

    @Test
    void aChangeToBeConfirmedHoldsEverywhere() throws IOException {
        ChangesViewModel model = changes();
        model.load();
        model.take(1);
        model.answer(true);
        model.answer(false);
        seen("plan", "change-confirmed", window -> new ChangesView(model, words, workshop));
    }

    @Test
    void whyAPlanWasIssuedHoldsEverywhere() throws IOException {
        changes();
        PlanText issued = desk().open("LG-2207-C").orElseThrow();
        seen("plan", "issued", window -> plan(new PlanInHand(issued), 9));
    }

    @Test
    void theChoiceOfAnotherPlanHoldsEverywhere() throws IOException {
        changes();
        seen("plan", "other", window -> {
            OtherPlanViewModel model =
                    new OtherPlanViewModel(desk(), workshop.tasks, words, workshop, (from, to) -> {});
            return FormView.titled(words.say("planning.other"), model.form(), words, workshop::back, model::load);
        });
    }

    @Test
    void anIssueHoldsEverywhere() {
        workshop.shop.names().add(ShopNames.Kind.PERSON, "Planner 1");
        seen("plan", "issue", window -> {
            IssueViewModel model = new IssueViewModel(
                    "LG-2207-C",
                    new PlanInHand(carrier()),
                    new PartialCheck(),
                    desk(),
                    workshop.shop,
                    workshop.tasks,
                    words,
                    workshop,
                    Workshop.CLOCK);
            return FormView.titled(words.say("planning.issue-it"), model.form(), words, workshop::back, model::load);
        });
    }
}
