package org.tenthwise.app.ui.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.ui.Watch;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.plan.PlanViewModel.StepDeed;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.catalogue.PlanFolder;
import org.tenthwise.checklists.editing.PartialCheck;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.Template;
import org.tenthwise.model.words.Words;

class PlanViewModelTest {

    private static final String NAME = "carrier";

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    @TempDir
    private Path folder;

    private PlanDesk desk;
    private PlanInHand plan;
    private PlanViewModel model;

    @BeforeEach
    void open() {
        desk = new PlanDesk(folder);
        plan = new PlanInHand(PlanText.of(DemoPart.SCREW_CARRIER.planText()).orElseThrow());
        model = new PlanViewModel(NAME, plan, desk, workshop.tasks, Words.ENGLISH, workshop);
    }

    private static Field<?> field(FormViewModel form, String key) {
        return form.fields().stream()
                .filter(field -> field.id().equals("plan-" + key))
                .findFirst()
                .orElseThrow();
    }

    private static void type(FormViewModel form, String key, String text) {
        Field<?> field = field(form, key);
        form.goTo(field);
        field.type();
        while (!field.reads().isEmpty()) {
            field.typing().orElseThrow().takeBack();
        }
        form.character(text);
    }

    @Test
    void whatIsNotChangedIsNoDraft() throws IOException {
        assertTrue(model.canIssue());
        model.load();
        assertEquals(List.of(), desk.drafts());
    }

    @Test
    void everyChangeIsKeptAsADraftAtOnce() throws IOException {
        model.take(2);
        model.act(StepDeed.COPY);
        assertEquals(List.of(NAME), desk.drafts());
        assertEquals(plan.text().text(), desk.open(NAME).orElseThrow().text());
        model.undo();
        assertEquals(
                DemoPart.SCREW_CARRIER.planText(), desk.open(NAME).orElseThrow().text());
    }

    @Test
    void aMovedStepStaysInHand() {
        String name = plan.steps().get(5).says("name").orElseThrow();
        model.take(5);
        model.act(StepDeed.EARLIER);
        assertEquals(4, model.inHandProperty().get());
        assertEquals(name, plan.steps().get(4).says("name").orElseThrow());
        model.act(StepDeed.LATER);
        assertEquals(name, plan.steps().get(5).says("name").orElseThrow());
    }

    @Test
    void theFirstStepIsNotMovedEarlierNorTheLastLater() {
        model.take(0);
        assertFalse(model.can(StepDeed.EARLIER));
        model.take(plan.steps().size() - 1);
        assertFalse(model.can(StepDeed.LATER));
        assertFalse(model.can(StepDeed.SPLIT));
    }

    @Test
    void whatIsMissingIsAskedOneByOneAndThenTheNextStepIs() {
        int bore = first("gauge_kind");
        plan.changeStep(bore, step -> step.without("method").without("gauge_kind"));
        plan.changeStep(bore + 2, step -> step.without("name"));
        model.load();
        assertFalse(model.canIssue());
        model.nextOpen();
        assertEquals("step %d of %s".formatted(bore, NAME), workshop.asked.get(workshop.asked.size() - 1));
        FormViewModel form = new PlanStepViewModel(NAME, plan, bore, Words.ENGLISH, workshop, Workshop.CLOCK).form();
        assertEquals("plan-as", form.inHandProperty().get().id());
        form.goOn();
        assertTrue(Set.of("plan-method", "plan-gauge_kind")
                .contains(form.inHandProperty().get().id()));
        type(form, "method", "Two ways.");
        type(form, "gauge_kind", "dial-indicator");
        form.goOn();
        assertEquals(List.of(bore + 2), plan.openSteps());
        assertEquals("step %d of %s".formatted(bore + 2, NAME), workshop.asked.get(workshop.asked.size() - 1));
    }

    /** Every key of the forms is one that plan files have: the plan made so has nothing wrong. */
    @Test
    void readingsAtEachPlaceAreToldByTheKeyOfPlanFiles() {
        int bore = plan.steps().stream()
                .map(step -> step.says("kind").orElse(""))
                .toList()
                .indexOf("bore");
        FormViewModel form = new PlanStepViewModel(NAME, plan, bore, Words.ENGLISH, workshop, Workshop.CLOCK).form();
        type(form, "readings_each", "3");
        form.goOn();
        assertEquals(Optional.of("3"), plan.steps().get(bore).value("readings_each"));
        assertEquals(List.of(), plan.open());
    }

    /** The tap is the deed only where all that is missing is among the answers; undo takes it back as a whole. */
    @Test
    void whatACheckLikeItSaysIsTakenByOneTap() {
        int bore = first("gauge_kind");
        String before = plan.text().text();
        plan.changeStep(bore, step -> step.without("method").without("gauge_kind"));
        String open = plan.text().text();
        PlanStepViewModel asked = new PlanStepViewModel(NAME, plan, bore, Words.ENGLISH, workshop, new Watch());
        Field<?> as = asked.form().inHandProperty().get();
        assertEquals("plan-as", as.id());
        assertEquals(open, plan.text().text());
        takeFirst(as);
        assertTrue(plan.steps().get(bore).value("method").isPresent());
        assertTrue(plan.steps().get(bore).value("gauge_kind").isPresent());
        plan.undo();
        assertEquals(open, plan.text().text());
        plan.undo();
        assertEquals(before, plan.text().text());
    }

    private static <T> void takeFirst(Field<T> field) {
        field.choice().choose(field.choice().offeredProperty().get().get(0));
    }

    @Test
    void aTemplateStandsBehindTheStepInHandAndIsAskedAboutAtOnce() throws IOException {
        model.take(2);
        model.act(StepDeed.ADD);
        workshop.template
                .orElseThrow()
                .accept(desk.templates().all(Words.ENGLISH.locale()).get(0));
        assertEquals(3, model.inHandProperty().get());
        assertEquals("step 3 of " + NAME, workshop.asked.get(workshop.asked.size() - 1));
        assertEquals(List.of(4, 5), plan.openSteps(), "the bore has no limits yet, the plug no clearance");
        assertEquals(Optional.of("5"), plan.steps().get(5).value("bore_step"));
        model.undo();
        assertEquals(
                DemoPart.SCREW_CARRIER.planText(), desk.open(NAME).orElseThrow().text());
    }

    @Test
    void stepsThatAreTickedAreKeptAsATemplateAndOfferedAfterThoseThatComeAlong() throws IOException {
        model.take(12);
        model.act(StepDeed.KEEP_TEMPLATE);
        assertEquals(
                "keep 12 of %d steps".formatted(plan.steps().size()), workshop.asked.get(workshop.asked.size() - 1));
        AtomicReference<List<TableText>> ticked = new AtomicReference<>(List.of());
        TicksViewModel ticks = new TicksViewModel(plan.steps(), Set.of(12), Words.ENGLISH, ticked::set);
        ticks.touch(15);
        ticks.touch(3);
        ticks.touch(12);
        ticks.touch(12);
        ticks.goOn();
        assertEquals(
                List.of(plan.steps().get(3), plan.steps().get(12), plan.steps().get(15)), ticked.get());
        AtomicBoolean kept = new AtomicBoolean();
        FormViewModel form = new KeepTemplateViewModel(
                        ticked.get(), desk.templates(), workshop.tasks, Words.ENGLISH, () -> kept.set(true))
                .form();
        form.character("Our bore");
        form.goOn();
        assertTrue(kept.get());
        List<Template> all = desk.templates().all(Words.ENGLISH.locale());
        assertEquals("Our bore", all.get(all.size() - 1).name());
        assertEquals(3, all.get(all.size() - 1).steps().size());
    }

    @Test
    void withoutATickNothingIsTaken() {
        AtomicReference<List<TableText>> ticked = new AtomicReference<>(List.of());
        TicksViewModel ticks = new TicksViewModel(plan.steps(), Set.of(4), Words.ENGLISH, ticked::set);
        ticks.touch(4);
        assertFalse(ticks.canGoOn());
        ticks.goOn();
        assertEquals(List.of(), ticked.get());
    }

    @Test
    void ofATemplateOfSeveralChecksSomeAreTaken() throws IOException {
        Template shipped = desk.templates().all(Words.ENGLISH.locale()).get(0);
        AtomicReference<Template> taken = new AtomicReference<>();
        TemplatesViewModel templates =
                new TemplatesViewModel(desk.templates(), workshop.tasks, Words.ENGLISH, workshop, taken::set);
        templates.take(shipped);
        assertEquals("steps of " + shipped.name(), workshop.asked.get(workshop.asked.size() - 1));
        Template one = new Template(shipped.name(), shipped.steps().subList(1, 2));
        workshop.template.orElseThrow().accept(one);
        assertEquals(one, taken.get());
    }

    /** A word that stands in the plan and is wrong is no tap on an answer: it would ask again without end. */
    @Test
    void anAnswerThatStandsThereAlreadyIsNoTap() {
        AtomicBoolean acted = new AtomicBoolean();
        Field<String> kind = Field.words("kind", "Kind", "Which kind?", true, 20);
        kind.offer(List.of("size", "bore"));
        kind.choice().choose("size");
        FormViewModel form = new FormViewModel(List.of(kind), Words.ENGLISH, "Keep", () -> acted.set(true));
        form.leadsOn(kind, Workshop.CLOCK);
        assertFalse(acted.get());
        form.goOn();
        assertTrue(acted.get());
    }

    private int first(String key) {
        int place = 0;
        while (plan.steps().get(place).value(key).isEmpty()) {
            place++;
        }
        return place;
    }

    @Test
    void aLimitIsTypedInPlaceOfTheOneThatStands() {
        int bore = first("lower");
        FormViewModel form = new PlanStepViewModel(NAME, plan, bore, Words.ENGLISH, workshop, Workshop.CLOCK).form();
        type(form, "lower", "12.345");
        form.goOn();
        assertEquals(Optional.of("12.345"), plan.steps().get(bore).value("lower"));
    }

    @Test
    void theSpotOnTheOutlineIsTyped() {
        int bore = first("lower");
        FormViewModel form = new PlanStepViewModel(NAME, plan, bore, Words.ENGLISH, workshop, Workshop.CLOCK).form();
        type(form, "at", "95; 70.0");
        form.goOn();
        assertEquals(Optional.of("[95, 70.0]"), plan.steps().get(bore).value("at"));
        assertTrue(plan.plan().isPresent());
    }

    @Test
    void aPlanIsBegunFromNothingAndIssuedOnceItIsWhole() throws IOException {
        FormViewModel begun = new NewPlanViewModel(
                        Optional.empty(), desk, workshop.tasks, Words.ENGLISH, workshop, Workshop.CLOCK)
                .form();
        type(begun, "part", "T-9/1");
        type(begun, "revision", "A");
        type(begun, "name", "Test bush");
        type(begun, "material", "steel C45");
        type(begun, "drawing", "T-9 sheet 1");
        type(begun, "unit", "mm");
        begun.goOn();
        assertEquals(List.of("T-9_1-A"), desk.drafts());
        PlanInHand made = new PlanInHand(desk.open("T-9_1-A").orElseThrow());
        PlanViewModel steps = new PlanViewModel("T-9_1-A", made, desk, workshop.tasks, Words.ENGLISH, workshop);
        assertFalse(steps.canIssue());
        steps.act(StepDeed.ADD);
        TemplatesViewModel templates = new TemplatesViewModel(
                desk.templates(), workshop.tasks, Words.ENGLISH, workshop, workshop.template.orElseThrow());
        templates.load();
        assertEquals("Empty check", templates.templatesProperty().get().get(0).name());
        templates.take(templates.templatesProperty().get().get(0));
        FormViewModel step = new PlanStepViewModel("T-9_1-A", made, 0, Words.ENGLISH, workshop, Workshop.CLOCK).form();
        type(step, "name", "Edges");
        type(step, "kind", "look");
        step.goOn();
        FormViewModel look = new PlanStepViewModel("T-9_1-A", made, 0, Words.ENGLISH, workshop, Workshop.CLOCK).form();
        type(look, "what", "No burr.");
        look.goOn();
        steps.load();
        assertTrue(steps.canIssue(), made.open().toString());
        FormViewModel issue = new IssueViewModel(
                        "T-9_1-A",
                        made,
                        new PartialCheck(),
                        desk,
                        workshop.shop,
                        workshop.tasks,
                        Words.ENGLISH,
                        workshop,
                        Workshop.CLOCK)
                .form();
        issue.goTo(issue.fields().get(0));
        issue.fields().get(0).type();
        issue.character("First");
        issue.goTo(issue.fields().get(1));
        issue.character("Planner 1");
        issue.goTo(issue.fields().get(2));
        issue.character("planner 1");
        issue.goOn();
        assertEquals(List.of(), new PlanFolder(folder).read().plans(), "nobody approves what they issue");
        issue.takeBack();
        issue.character("2");
        issue.goOn();
        assertEquals("1", new PlanFolder(folder).read().plans().get(0).issue());
        assertEquals(
                Optional.of("planner 2"),
                new PlanFolder(folder).read().plans().get(0).issues().get(0).approvedBy());
    }
}
