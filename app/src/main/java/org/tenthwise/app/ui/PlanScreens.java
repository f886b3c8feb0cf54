package org.tenthwise.app.ui;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tenthwise.app.picture.TextMetrics;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.picture.ScreenFaces;
import org.tenthwise.app.ui.plan.BalloonsView;
import org.tenthwise.app.ui.plan.BalloonsViewModel;
import org.tenthwise.app.ui.plan.ChangesView;
import org.tenthwise.app.ui.plan.ChangesViewModel;
import org.tenthwise.app.ui.plan.DraftedView;
import org.tenthwise.app.ui.plan.ElementView;
import org.tenthwise.app.ui.plan.ElementViewModel;
import org.tenthwise.app.ui.plan.IssueViewModel;
import org.tenthwise.app.ui.plan.KeepTemplateViewModel;
import org.tenthwise.app.ui.plan.ListChoiceViewModel;
import org.tenthwise.app.ui.plan.MarkFiguresViewModel;
import org.tenthwise.app.ui.plan.MarksView;
import org.tenthwise.app.ui.plan.MarksViewModel;
import org.tenthwise.app.ui.plan.NewPlanViewModel;
import org.tenthwise.app.ui.plan.OtherPlanViewModel;
import org.tenthwise.app.ui.plan.OutlineView;
import org.tenthwise.app.ui.plan.OutlineViewModel;
import org.tenthwise.app.ui.plan.PlanBesideViewModel;
import org.tenthwise.app.ui.plan.PlanHeadViewModel;
import org.tenthwise.app.ui.plan.PlanStepViewModel;
import org.tenthwise.app.ui.plan.PlanView;
import org.tenthwise.app.ui.plan.PlanViewModel;
import org.tenthwise.app.ui.plan.PlansView;
import org.tenthwise.app.ui.plan.PlansViewModel;
import org.tenthwise.app.ui.plan.TemplatesView;
import org.tenthwise.app.ui.plan.TemplatesViewModel;
import org.tenthwise.app.ui.plan.TicksView;
import org.tenthwise.app.ui.plan.TicksViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.app.ui.shell.Shell;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.drafting.Drafted;
import org.tenthwise.checklists.editing.OutlineText;
import org.tenthwise.checklists.editing.PartialCheck;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.Template;
import org.tenthwise.model.words.Words;

/** The screens on which plans are made and changed. Screen thread only. */
abstract class PlanScreens implements Navigator {

    protected final Fittings with;
    protected final Shell shell;
    protected final Runs shop;
    protected final Words words;
    protected final LedgerTasks tasks;
    /** Away from the thread of the ledger, for what takes long. */
    protected final LedgerTasks aside;

    protected final PictureFrames pictures;

    /** In the language spoken now. */
    protected PlanScreens(Fittings with) {
        this.with = with;
        this.shell = with.shell();
        this.shop = with.shop();
        this.words = with.spoken().words();
        this.tasks = new LedgerTasks(with.background(), words, this);
        this.aside = new LedgerTasks(with.aside(), words, this);
        this.pictures = new PictureFrames(new ScreenFaces(), new TextMetrics(words), with.look());
    }

    @Override
    public void plans() {
        shell.show(new PlansView(new PlansViewModel(desk(), tasks, words, this), words, this));
    }

    /** Without a folder of plans no key leads to any of this. */
    private PlanDesk desk() {
        return with.desk().orElseThrow();
    }

    @Override
    public void newPlan() {
        newPlan(Optional.empty());
    }

    @Override
    public void newPlanOf(String list) {
        newPlan(Optional.of(list));
    }

    private void newPlan(Optional<String> list) {
        show("planning.new", new NewPlanViewModel(list, desk(), tasks, words, this, with.clock()).form(), () -> {});
    }

    @Override
    public void chooseList() {
        ListChoiceViewModel model = new ListChoiceViewModel(desk(), tasks, words, this);
        show("planning.list", model.form(), model::load);
    }

    @Override
    public void drafted(String name, Drafted drafted) {
        shell.show(new DraftedView(name, drafted, words, this));
    }

    private void show(String title, FormViewModel form, Runnable load) {
        shell.show(FormView.titled(words.say(title), form, words, this::back, load));
    }

    @Override
    public void plan(String name) {
        tasks.run(
                () -> desk().open(name),
                found -> found.ifPresentOrElse(
                        text -> shell.show(new PlanView(
                                new PlanViewModel(name, new PlanInHand(text), desk(), tasks, words, this),
                                words,
                                this)),
                        () -> tell(Notice.plain(
                                words.say("planning.plan"),
                                words.say("planning.no-toml"),
                                words.say("shell.understood")))));
    }

    @Override
    public void planHead(String name, PlanInHand plan) {
        tasks.run(
                () -> desk().drawings(),
                files -> shell.show(new FormView(
                        words.say("planning.head"),
                        new PlanHeadViewModel(plan, files, words, this, with.clock()).form(),
                        words,
                        RunHeading.titled(words.say("planning.head"), words, this::back)
                                .end(Key.onward("outline", words.say("planning.outline"), () -> outline(name, plan))),
                        () -> {})));
    }

    @Override
    public void planBeside(PlanInHand plan, PlanInHand.Beside open) {
        PlanBesideViewModel model = new PlanBesideViewModel(plan, open, words, this, with.clock());
        shell.show(FormView.titled(model.title(), model.form(), words, this::back, () -> {}));
    }

    @Override
    public void outline(String name, PlanInHand plan) {
        shell.show(
                new OutlineView(new OutlineViewModel(name, plan, desk(), tasks, words, this), words, pictures, this));
    }

    @Override
    public void outlineElement(PlanInHand plan, OutlineText.Side side, int place, boolean isNew) {
        shell.show(new ElementView(new ElementViewModel(plan, side, place, isNew, words, this), words, pictures, this));
    }

    @Override
    public void marks(String name, PlanInHand plan, int place) {
        shell.show(new MarksView(
                new MarksViewModel(name, plan, place, desk(), tasks, words, this), words, pictures, this));
    }

    @Override
    public void markByFigures(PlanInHand plan, int place) {
        show("planning.marks", new MarkFiguresViewModel(plan, place, words, this).form(), () -> {});
    }

    @Override
    public void planStep(String name, PlanInHand plan, int place) {
        PlanStepViewModel model = new PlanStepViewModel(name, plan, place, words, this, with.clock());
        shell.show(FormView.titled(model.title(), model.form(), words, this::back, () -> {}));
    }

    @Override
    public void templates(Consumer<Template> chosen) {
        shell.show(
                new TemplatesView(new TemplatesViewModel(desk().templates(), tasks, words, this, chosen), words, this));
    }

    @Override
    public void templateSteps(Template template, Consumer<Template> chosen) {
        Set<Integer> all = IntStream.range(0, template.steps().size()).boxed().collect(Collectors.toSet());
        shell.show(new TicksView(
                template.name(),
                words.say("planning.ticks.take"),
                new TicksViewModel(
                        template.steps(), all, words, ticked -> chosen.accept(new Template(template.name(), ticked))),
                words,
                this));
    }

    @Override
    public void keepTemplate(List<TableText> steps, int place) {
        shell.show(new TicksView(
                words.say("planning.keep-template"),
                words.say("ask.next"),
                new TicksViewModel(steps, Set.of(place), words, this::nameTemplate),
                words,
                this));
    }

    /** Once it is kept, the plan is shown again. */
    private void nameTemplate(List<TableText> ticked) {
        KeepTemplateViewModel model = new KeepTemplateViewModel(ticked, desk().templates(), tasks, words, () -> {
            back();
            back();
        });
        show("planning.keep-template", model.form(), () -> {});
    }

    @Override
    public void balloons(String name, PlanInHand plan, int place) {
        BalloonsViewModel model =
                new BalloonsViewModel(name, plan, place, desk(), with.drawings(), aside, tasks, words);
        shell.show(new BalloonsView(model, words, pictures, this));
    }

    @Override
    public void changes(String name, PlanInHand plan, PartialCheck partial) {
        shell.show(new ChangesView(new ChangesViewModel(name, plan, partial, desk(), tasks, words, this), words, this));
    }

    @Override
    public void otherPlan(BiConsumer<String, Optional<String>> chosen) {
        OtherPlanViewModel model = new OtherPlanViewModel(desk(), tasks, words, this, chosen);
        show("planning.other", model.form(), model::load);
    }

    @Override
    public void issue(String name, PlanInHand plan, PartialCheck partial) {
        IssueViewModel model = new IssueViewModel(name, plan, partial, desk(), shop, tasks, words, this, with.clock());
        show("planning.issue-it", model.form(), model::load);
    }
}
