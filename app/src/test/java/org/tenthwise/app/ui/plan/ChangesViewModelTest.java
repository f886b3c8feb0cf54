package org.tenthwise.app.ui.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.text.IssueWords;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.begin.BeginViewModel;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.plan.ChangesViewModel.ChangeRow;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.catalogue.PlanFolder;
import org.tenthwise.checklists.editing.PartialCheck;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.model.plan.IssueOfPlan;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.words.Words;

class ChangesViewModelTest {

    private static final String NAME = "carrier";

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    @TempDir
    private Path folder;

    private final PartialCheck partial = new PartialCheck();
    private PlanDesk desk;
    private PlanInHand plan;
    private ChangesViewModel model;

    @BeforeEach
    void issueAndChange() throws IOException {
        desk = new PlanDesk(folder);
        desk.issue(
                NAME,
                PlanText.of(DemoPart.SCREW_CARRIER.planText()).orElseThrow(),
                new PlanDesk.Why(
                        "First issue", "Planner 1", Optional.empty(), LocalDate.of(2026, 11, 30), Optional.empty()));
        plan = new PlanInHand(desk.open(NAME).orElseThrow());
        plan.changeStep(9, step -> step.with("lower", "61.96"));
        plan.changeStep(12, step -> step.with("zone", "\"H6\""));
        model = model(NAME);
        model.load();
    }

    private ChangesViewModel model(String name) {
        return new ChangesViewModel(name, plan, partial, desk, workshop.tasks, Words.ENGLISH, workshop);
    }

    private List<String> proposed() {
        return model.rowsProperty().get().stream()
                .flatMap(row -> row.proposed().stream())
                .toList();
    }

    private FormViewModel issue() {
        FormViewModel form = new IssueViewModel(
                        NAME,
                        plan,
                        partial,
                        desk,
                        workshop.shop,
                        workshop.tasks,
                        Words.ENGLISH,
                        workshop,
                        Workshop.CLOCK)
                .form();
        form.goTo(form.fields().get(0));
        form.fields().get(0).type();
        form.character("Drawing changed");
        form.goTo(form.fields().get(1));
        form.character("Planner 1");
        form.goTo(form.fields().get(2));
        form.goOn();
        return form;
    }

    private List<IssueOfPlan> issues() throws IOException {
        return new PlanFolder(folder).read().plans().get(0).issues();
    }

    @Test
    void theOldAndTheNewAreSaidWithTheClassOfTheChange() {
        ChangeRow shoulder = model.rowsProperty().get().stream()
                .filter(row -> row.proposed().equals(Optional.of("10")))
                .findFirst()
                .orElseThrow();
        assertEquals(List.of("requirement, lower limit: was 61.95 mm, now 61.96 mm"), shoulder.told());
        assertEquals("requirement, Check again?", shoulder.line());
    }

    @Test
    void whatRestsOnAChangedOneIsProposedWithIt() {
        assertTrue(proposed().containsAll(List.of("10", "13", "14")), proposed()::toString);
    }

    @Test
    void whatIsConfirmedStandsInTheIssue() throws IOException {
        answerAll("10");
        issue();
        assertEquals(Optional.of(List.of("10")), issues().get(1).affected());
    }

    private void answerAll(String again) {
        int rows = model.rowsProperty().get().size();
        for (int place = 0; place < rows; place++) {
            model.take(place);
            Optional<String> called = model.rowsProperty().get().get(place).proposed();
            called.ifPresent(number -> model.answer(number.equals(again)));
        }
        assertEquals("nothing", model.leftValue().getValue());
    }

    @Test
    void allLeftOutIsAnEmptyListAndNothingSaidIsNone() throws IOException {
        answerAll("none");
        assertEquals(Optional.of(List.of()), partial.affected(plan));
        PartialCheck silent = new PartialCheck();
        new ChangesViewModel(NAME, plan, silent, desk, workshop.tasks, Words.ENGLISH, workshop).load();
        assertEquals(Optional.empty(), silent.affected(plan));
        assertFalse(silent.isHalfAnswered(plan));
    }

    @Test
    void halfAnsweredIsNotIssued() throws IOException {
        model.take(1);
        model.answer(true);
        assertEquals(2, model.inHandProperty().get(), "on to the next that nothing is said of");
        issue();
        assertEquals(1, issues().size());
    }

    @Test
    void anAnswerLapsesWhenTheDraftChangesAndSoWithUndo() {
        answerAll("10");
        plan.changeStep(13, step -> step.with("clearance_least", "0.006"));
        assertEquals(Optional.empty(), partial.affected(plan));
        model.load();
        assertTrue(partial.unanswered() > 0);
        plan.undo();
        assertEquals(Optional.empty(), partial.affected(plan));
    }

    @Test
    void withAnotherPlanNothingIsConfirmed() throws IOException {
        desk.keep("barrel", PlanText.of(DemoPart.WINCH_BARREL_END.planText()).orElseThrow());
        model.chooseOther();
        workshop.other.orElseThrow().accept("barrel", Optional.empty());
        assertTrue(model.comparedProperty().get().startsWith("WB-118"));
        model.take(2);
        assertFalse(model.canAnswer());
    }

    @Test
    void withoutAPlanInForceThereIsNothingToCompareWith() {
        ChangesViewModel first = model("not yet issued");
        first.load();
        assertEquals(1, first.rowsProperty().get().size());
        assertEquals("", first.comparedProperty().get());
        assertFalse(first.canAnswer());
    }

    @Test
    void anyTwoAreComparedWithAnIssueInForceBeforeToo() throws IOException {
        answerAll("10");
        issue();
        assertEquals(List.of("issues/carrier-issue-" + issueBefore()), desk.issuesBefore());
        model.chooseOther();
        workshop.other.orElseThrow().accept(desk.issuesBefore().get(0), Optional.of(NAME));
        assertTrue(
                model.comparedProperty().get().startsWith("From LG-2207"),
                model.comparedProperty().get());
        assertTrue(
                model.rowsProperty().get().stream()
                        .anyMatch(row -> row.told().contains("requirement, lower limit: was 61.95 mm, now 61.96 mm")),
                "what the issue changed");
        model.take(1);
        assertFalse(model.canAnswer());
        workshop.other.orElseThrow().accept(NAME, Optional.of("not there"));
        assertEquals("", model.comparedProperty().get());
    }

    private static String issueBefore() {
        return DemoPart.SCREW_CARRIER.plan().issue();
    }

    private static List<String> issueLines(Plan plan) {
        return new IssueWords(Words.ENGLISH).lines(plan);
    }

    @Test
    void whatTheFirstArticleTakesInIsSaidAsItWasConfirmed() throws IOException {
        assertEquals(
                List.of(
                        "Issue " + issueBefore() + ": First issue",
                        "by Planner 1, 2026-11-30",
                        "A first article of this issue is a full one: no partial one was confirmed"),
                issueLines(plan.plan().orElseThrow()));
        assertEquals(List.of(), issueLines(DemoPart.SCREW_CARRIER.plan()));
        answerAll("10");
        issue();
        Plan partly = new PlanFolder(folder).read().plans().get(0);
        String again = "With an accepted first article of the issue before, check again: 10. Without one: in full";
        assertEquals(again, issueLines(partly).get(2));
        assertTrue(new BeginViewModel(partly, workshop.shop, workshop.tasks, Words.ENGLISH, workshop, Workshop.CLOCK)
                .facts()
                .contains(again));
        PlanInHand inForce = new PlanInHand(desk.open(NAME).orElseThrow());
        assertTrue(new PlanViewModel(NAME, inForce, desk, workshop.tasks, Words.ENGLISH, workshop)
                .openProperty()
                .get()
                .contains(again));
    }

    @Test
    void nothingToCheckAgainIsNotInFull() throws IOException {
        answerAll("none");
        issue();
        assertEquals(
                "With an accepted first article of the issue before, nothing is checked again. Without one: in full",
                issueLines(new PlanFolder(folder).read().plans().get(0)).get(2));
    }
}
