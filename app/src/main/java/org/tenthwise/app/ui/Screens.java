package org.tenthwise.app.ui;

import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.tenthwise.app.bench.Bench;
import org.tenthwise.app.picture.TextMetrics;
import org.tenthwise.app.reference.Comparison;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.session.SettingFault;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.app.text.GaugeWords;
import org.tenthwise.app.ui.about.AboutFacts;
import org.tenthwise.app.ui.about.AboutView;
import org.tenthwise.app.ui.about.AboutViewModel;
import org.tenthwise.app.ui.about.LicencesView;
import org.tenthwise.app.ui.about.LicencesViewModel;
import org.tenthwise.app.ui.begin.BeginView;
import org.tenthwise.app.ui.begin.BeginViewModel;
import org.tenthwise.app.ui.bench.BenchView;
import org.tenthwise.app.ui.bench.BenchViewModel;
import org.tenthwise.app.ui.deed.CutOnTheseForm;
import org.tenthwise.app.ui.deed.DisposeForm;
import org.tenthwise.app.ui.deed.GaugeForm;
import org.tenthwise.app.ui.deed.MachineForm;
import org.tenthwise.app.ui.deed.OtherGaugeForm;
import org.tenthwise.app.ui.deed.StoodForm;
import org.tenthwise.app.ui.deed.StrikeForm;
import org.tenthwise.app.ui.deed.WordsForm;
import org.tenthwise.app.ui.deed.WrongSettingForm;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.home.FindHints;
import org.tenthwise.app.ui.home.FindViewModel;
import org.tenthwise.app.ui.home.HomeView;
import org.tenthwise.app.ui.home.HomeViewModel;
import org.tenthwise.app.ui.home.RecordsView;
import org.tenthwise.app.ui.home.RunListViewModel;
import org.tenthwise.app.ui.picture.ScreenFaces;
import org.tenthwise.app.ui.record.Handout;
import org.tenthwise.app.ui.record.RecordView;
import org.tenthwise.app.ui.record.RecordViewModel;
import org.tenthwise.app.ui.reference.ReferenceView;
import org.tenthwise.app.ui.reference.ReferenceViewModel;
import org.tenthwise.app.ui.run.RunScreen;
import org.tenthwise.app.ui.run.RunViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.shell.Shell;
import org.tenthwise.app.ui.sign.SignView;
import org.tenthwise.app.ui.sign.SignViewModel;
import org.tenthwise.app.ui.theme.Look;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.checklists.catalogue.Catalogue;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.words.Words;

/**
 * Builds every screen by hand and lays it on the shell. The home screen lies undermost; a run and a record lie on it,
 * and what is done to a run lies on the run. Screen thread only.
 */
public final class Screens implements Navigator {

    private final Shell shell;
    private final Runs shop;
    private final Callable<Catalogue> plans;
    private final Handout handout;
    private final Sums sums;
    private final AboutFacts facts;
    private final Words words;
    private final Clock clock;
    private final LedgerTasks tasks;
    private final PictureFrames pictures;
    private final Bench bench;
    private Optional<Screen> undermost = Optional.empty();

    /**
     * @param background its worker owns the ledger of {@code shop}
     * @param plans looks up the plans there are; called on the worker
     * @param handout called on the worker
     */
    public Screens(
            Shell shell,
            Look look,
            Runs shop,
            Background background,
            Callable<Catalogue> plans,
            Handout handout,
            Sums sums,
            AboutFacts facts,
            Words words,
            Clock clock) {
        this.shell = shell;
        this.shop = shop;
        this.plans = plans;
        this.handout = handout;
        this.sums = sums;
        this.facts = facts;
        this.words = words;
        this.clock = clock;
        this.tasks = new LedgerTasks(background, words, this);
        this.pictures = new PictureFrames(new ScreenFaces(), new TextMetrics(), look);
        this.bench = new Bench(sums, words);
    }

    @Override
    public void home() {
        undermost.ifPresentOrElse(shell::backTo, () -> {
            Screen home = new HomeView(new HomeViewModel(shop, plans, tasks, words, this, clock), words, pictures);
            undermost = Optional.of(home);
            shell.replace(home);
        });
    }

    @Override
    public void begin(Plan plan) {
        shell.show(new BeginView(new BeginViewModel(plan, shop, tasks, words, this), words, pictures, this));
    }

    @Override
    public void run(RunSession session) {
        tasks.run(session::state, state -> {
            showOverHome(new RunScreen(new RunViewModel(session, state, tasks, this, words, clock), pictures, words));
            new GaugeWords(words)
                    .withdrawnLast(state.sheet().run())
                    .ifPresent(said ->
                            tell(Notice.plain(words.say("run.withdrawn"), said, words.say("shell.understood"))));
        });
    }

    @Override
    public void strike(RunSession session) {
        show(new StrikeForm(inHand(session), words, this));
    }

    @Override
    public void stoodElsewhere(RunSession session) {
        show(new StoodForm(inHand(session), words, this));
    }

    @Override
    public void dispose(RunSession session) {
        show(new DisposeForm(inHand(session), words, this));
    }

    @Override
    public void sign(RunSession session) {
        tasks.run(
                session::state,
                state -> shell.show(new SignView(
                        new SignViewModel(
                                inHand(session), state.sheet().run().closed().isPresent(), words, this, clock),
                        words,
                        pictures,
                        this)));
    }

    @Override
    public void record(String run) {
        Screen record =
                new RecordView(new RecordViewModel(run, shop, handout, tasks, words, this), words, pictures, this);
        if (shell.inHand().filter(RecordsView.class::isInstance).isPresent()) {
            shell.show(record);
        } else {
            showOverHome(record);
        }
    }

    /** Home lies under it and is not looked up before one comes back to it. */
    private void showOverHome(Screen screen) {
        if (undermost.isEmpty()) {
            home();
        }
        shell.showOver(undermost.orElseThrow(), screen);
    }

    @Override
    public void records() {
        shell.show(new RecordsView(new RunListViewModel(true, shop, tasks, words, this, clock), words, pictures, this));
    }

    @Override
    public void find(Consumer<String> found) {
        FindViewModel model = new FindViewModel(shop, tasks, words, this, found);
        String title = words.say("find.title");
        shell.show(new FormView(title, model.form(), words, RunHeading.titled(title, words, this::back), model::load)
                .about(new FindHints(words)));
    }

    @Override
    public void about() {
        shell.show(new AboutView(new AboutViewModel(facts, plans, tasks, words), words, this));
    }

    @Override
    public void licences() {
        shell.show(new LicencesView(new LicencesViewModel(words), words, pictures.look(), this));
    }

    @Override
    public void reference() {
        shell.show(new ReferenceView(
                new ReferenceViewModel(new Comparison(sums), tasks, words), words, pictures.look(), this));
    }

    @Override
    public void say(Saying what, RunSession session) {
        show(new WordsForm(what, inHand(session), words, this));
    }

    @Override
    public void gauge(RunSession session) {
        tasks.run(session::state, state -> {
            if (state.settingsHere().isEmpty()) {
                otherGauge(session);
            } else {
                show(new GaugeForm(inHand(session), words, this));
            }
        });
    }

    @Override
    public void otherGauge(RunSession session) {
        show(new OtherGaugeForm(inHand(session), words, this));
    }

    @Override
    public void wrongSetting(RunSession session, Entry setting, SettingFault fault) {
        show(new WrongSettingForm(inHand(session), setting, fault, words, this));
    }

    @Override
    public void cutOnThese(RunSession session) {
        show(new CutOnTheseForm(inHand(session), words, this));
    }

    @Override
    public void machine(RunSession session) {
        show(new MachineForm(inHand(session), words, this));
    }

    @Override
    public void bench() {
        shell.show(new BenchView(BenchViewModel.alone(bench, words, this), pictures, words));
    }

    @Override
    public void bench(RunSession session) {
        tasks.run(
                session::state,
                state -> shell.show(new BenchView(
                        BenchViewModel.beside(session, state, bench, words, this, tasks), pictures, words)));
    }

    @Override
    public void back() {
        shell.back();
    }

    @Override
    public void tell(Notice message) {
        shell.tell(message);
    }

    private void show(StepForm step) {
        shell.show(FormView.of(step, words, pictures));
    }

    private CurrentRun inHand(RunSession session) {
        return new CurrentRun(session, shop, tasks);
    }
}
