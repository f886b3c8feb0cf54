package org.tenthwise.app.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.plan.DraftedView;
import org.tenthwise.app.ui.plan.KeepTemplateViewModel;
import org.tenthwise.app.ui.plan.ListChoiceViewModel;
import org.tenthwise.app.ui.plan.NewPlanViewModel;
import org.tenthwise.app.ui.plan.PlanHeadViewModel;
import org.tenthwise.app.ui.plan.PlanStepViewModel;
import org.tenthwise.app.ui.plan.PlansView;
import org.tenthwise.app.ui.plan.PlansViewModel;
import org.tenthwise.app.ui.plan.TemplatesView;
import org.tenthwise.app.ui.plan.TemplatesViewModel;
import org.tenthwise.app.ui.plan.TicksView;
import org.tenthwise.app.ui.plan.TicksViewModel;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.drafting.Drafted;
import org.tenthwise.checklists.drafting.Drafter;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.checklists.editing.Template;
import org.tenthwise.checklists.editing.TomlValue;
import org.tenthwise.model.callout.CalloutReader;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Words;

/** Plans made and changed at the tablet, on every display. */
class PlanScreenTest extends PlansAtHand {

    /** Two steps of it lack what no check is one without. */
    private static PlanInHand half() {
        PlanInHand plan = new PlanInHand(carrier());
        plan.changeStep(6, step -> step.without("gauge_kind").without("places").without("method"));
        plan.changeStep(7, step -> step.without("name"));
        return plan;
    }

    private Screen step(PlanInHand plan, int place) {
        PlanStepViewModel model = new PlanStepViewModel("LG-2207-C", plan, place, words, workshop, Workshop.CLOCK);
        return FormView.titled(model.title(), model.form(), words, workshop::back, () -> {});
    }

    @Test
    void thePlansThereAreHoldEverywhere() throws IOException {
        desk().issue(
                        "LG-2207-C",
                        carrier(),
                        new PlanDesk.Why(
                                "First issue",
                                "Planner 1",
                                Optional.empty(),
                                LocalDate.of(2026, 11, 30),
                                Optional.empty()));
        desk().keep(
                        "WB-118-B",
                        PlanText.of(DemoPart.WINCH_BARREL_END.planText())
                                .orElseThrow()
                                .without("step", 3));
        seen(
                "plans",
                "two",
                window -> new PlansView(new PlansViewModel(desk(), workshop.tasks, words, workshop), words, workshop));
    }

    @Test
    void aPlanWithOpenPointsHoldsEverywhere() {
        seen("plan", "open", window -> plan(half(), 6));
    }

    @Test
    void aPlanWithNothingOpenHoldsEverywhere() {
        seen("plan", "whole", window -> plan(new PlanInHand(carrier()), 9));
    }

    /** No sign of the drawing may be an empty box. */
    @Test
    void signsOfTheDrawingHoldEverywhere() {
        PlanInHand plan = new PlanInHand(carrier());
        plan.changeStep(6, step -> step.with("name", TomlValue.text("⌴ for the screw"))
                .with("requirement", TomlValue.text("4X ⌴ ⌀15 ±0.1 ↧8")));
        seen("plan", "signs", window -> plan(plan, 6));
        seen("plan", "signs-step", window -> step(plan, 6));
    }

    @Test
    void whatIsMissingInAStepHoldsEverywhere() {
        seen("plan", "missing", window -> step(half(), 6));
    }

    /** One like it can be taken by a tap, under what the drawing asks here. */
    @Test
    void aStepLikeAnotherHoldsEverywhere() {
        PlanInHand plan = half();
        plan.changeStep(6, step -> step.without("operation").with("requirement", TomlValue.text("Ø70 h6")));
        seen("plan", "as-another", window -> step(plan, 6));
    }

    @Test
    void aStepThatIsWholeHoldsEverywhere() {
        seen("plan", "step", window -> step(new PlanInHand(carrier()), 6));
    }

    @Test
    void theTemplatesHoldEverywhere() throws IOException {
        desk().templates()
                .keep(Template.kept("Bore of ours", carrier().list("step").subList(12, 14)));
        seen(
                "plan",
                "templates",
                window -> new TemplatesView(
                        new TemplatesViewModel(desk().templates(), workshop.tasks, words, workshop, chosen -> {}),
                        words,
                        workshop));
    }

    @Test
    void stepsToBeTickedHoldEverywhere() {
        seen(
                "plan",
                "ticks",
                window -> new TicksView(
                        words.say("planning.keep-template"),
                        words.say("ask.next"),
                        new TicksViewModel(carrier().list("step"), Set.of(0, 2), words, ticked -> {}),
                        words,
                        workshop));
    }

    @Test
    void aTemplateToBeKeptHoldsEverywhere() {
        seen(
                "plan",
                "keep-template",
                window -> FormView.titled(
                        words.say("planning.keep-template"),
                        new KeepTemplateViewModel(
                                        carrier().list("step").subList(12, 24),
                                        desk().templates(),
                                        workshop.tasks,
                                        words,
                                        workshop::back)
                                .form(),
                        words,
                        workshop::back,
                        () -> {}));
    }

    @Test
    void theHeadOfAPlanHoldsEverywhere() {
        seen(
                "plan",
                "head",
                window -> FormView.titled(
                        words.say("planning.head"),
                        new PlanHeadViewModel(half(), List.of("LG-2207.pdf"), words, workshop, Workshop.CLOCK).form(),
                        words,
                        workshop::back,
                        () -> {}));
    }

    @Test
    void aNewPlanHoldsEverywhere() {
        seen(
                "plan",
                "new",
                window -> FormView.titled(
                        words.say("planning.new"),
                        new NewPlanViewModel(Optional.empty(), desk(), workshop.tasks, words, workshop, Workshop.CLOCK)
                                .form(),
                        words,
                        workshop::back,
                        () -> {}));
    }

    @Test
    void theListsThereAreHoldEverywhere() throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("LG-2207 characteristics.csv"), "No.,Requirement");
        seen("plan", "lists", window -> {
            ListChoiceViewModel model = new ListChoiceViewModel(desk(), workshop.tasks, words, workshop);
            return FormView.titled(words.say("planning.list"), model.form(), words, workshop::back, model::load);
        });
    }

    @Test
    void whatCameOfAListHoldsEverywhere() {
        Drafted drafted = new Drafter(new CalloutReader(Unit.MILLIMETRE, Optional.empty()), Words.ENGLISH)
                .of(
                        PlanText.of("format = 1\n").orElseThrow(),
                        List.of(
                                List.of("No.", "Requirement"),
                                List.of("1", "Ø30 H7"),
                                List.of("2", "4x45°"),
                                List.of("3", "(25)"),
                                List.of("4", "4X Ø6.6 ±0.1 THRU ⌴ Ø11 ±0.2 ↧ 6.4 ±0.2")));
        seen("plan", "drafted", window -> new DraftedView("LG-2207-C", drafted, words, workshop));
    }
}
