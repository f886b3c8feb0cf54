package org.tenthwise.app.ui;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.tenthwise.app.bench.Bench;
import org.tenthwise.app.reference.Comparison;
import org.tenthwise.app.session.FiguresReport;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.SettingFault;
import org.tenthwise.app.session.ShopNames;
import org.tenthwise.app.text.GaugeWords;
import org.tenthwise.app.ui.about.AboutView;
import org.tenthwise.app.ui.about.AboutViewModel;
import org.tenthwise.app.ui.about.LicencesView;
import org.tenthwise.app.ui.about.LicencesViewModel;
import org.tenthwise.app.ui.begin.BeginView;
import org.tenthwise.app.ui.begin.BeginViewModel;
import org.tenthwise.app.ui.bench.BenchView;
import org.tenthwise.app.ui.bench.BenchViewModel;
import org.tenthwise.app.ui.deed.CalibrationForm;
import org.tenthwise.app.ui.deed.GaugeForm;
import org.tenthwise.app.ui.deed.StepForms;
import org.tenthwise.app.ui.deed.WordsForm;
import org.tenthwise.app.ui.deed.WrongSettingForm;
import org.tenthwise.app.ui.documents.DocumentsView;
import org.tenthwise.app.ui.documents.DocumentsViewModel;
import org.tenthwise.app.ui.documents.FiguresChoiceViewModel;
import org.tenthwise.app.ui.documents.FiguresView;
import org.tenthwise.app.ui.documents.FiguresViewModel;
import org.tenthwise.app.ui.drawing.OnDrawingView;
import org.tenthwise.app.ui.drawing.OnDrawingViewModel;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.guide.GuideView;
import org.tenthwise.app.ui.guide.GuideViewModel;
import org.tenthwise.app.ui.home.FindHints;
import org.tenthwise.app.ui.home.FindViewModel;
import org.tenthwise.app.ui.home.HomeView;
import org.tenthwise.app.ui.home.HomeViewModel;
import org.tenthwise.app.ui.more.MoreView;
import org.tenthwise.app.ui.more.MoreViewModel;
import org.tenthwise.app.ui.reference.ReferenceView;
import org.tenthwise.app.ui.reference.ReferenceViewModel;
import org.tenthwise.app.ui.run.RunScreen;
import org.tenthwise.app.ui.run.RunViewModel;
import org.tenthwise.app.ui.settings.CopiesViewModel;
import org.tenthwise.app.ui.settings.FolderView;
import org.tenthwise.app.ui.settings.FolderViewModel;
import org.tenthwise.app.ui.settings.NameViewModel;
import org.tenthwise.app.ui.settings.RegisterViewModel;
import org.tenthwise.app.ui.settings.SettingsView;
import org.tenthwise.app.ui.settings.SettingsViewModel;
import org.tenthwise.app.ui.shell.Deed;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.sign.SignView;
import org.tenthwise.app.ui.sign.SignViewModel;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Entry;

/**
 * Builds every screen by hand and lays it on the shell. The home screen lies undermost; a run and a record lie on it,
 * and what is done to a run lies on the run. Screen thread only.
 */
public final class Screens extends RecordScreens {

    private final Bench bench;
    private final StepForms forms;
    private Optional<Screen> undermost = Optional.empty();

    /** In the language spoken now. */
    public Screens(Fittings with) {
        super(with);
        this.bench = new Bench(with.sums(), words);
        this.forms = new StepForms(words, this, with.clock());
    }

    /** Opens the client at home; over it lie at a desk the records, and for a shop that is new, how one begins. */
    public void open() {
        home();
        tasks.run(() -> shop.isDesk(), isDesk -> {
            if (isDesk) {
                records();
            } else {
                tasks.run(() -> shop.names().isNew(), isNew -> {
                    if (isNew) {
                        guide();
                    }
                });
            }
        });
    }

    @Override
    public void guide() {
        shell.show(new GuideView(
                new GuideViewModel(with.facts().get().plansAt(), with.plans(), shop, tasks, words, this),
                words,
                pictures,
                this));
    }

    @Override
    public void home() {
        undermost.ifPresentOrElse(shell::backTo, () -> shell.replace(homeView()));
    }

    private Screen homeView() {
        Screen home = new HomeView(
                new HomeViewModel(shop, with.plans(), with.desk().isPresent(), tasks, words, this, with.clock()),
                words,
                pictures);
        undermost = Optional.of(home);
        return home;
    }

    @Override
    public void settings() {
        Optional<CopiesViewModel> copies = with.backups()
                .map(book -> new CopiesViewModel(book, with.facts().get().backups(), tasks, words, this));
        shell.show(new SettingsView(
                new SettingsViewModel(with.look(), with.spoken(), shop, copies, tasks, this), words, this));
    }

    @Override
    public void name(ShopNames.Kind kind) {
        NameViewModel model = new NameViewModel(kind, shop, tasks, words, this);
        shell.show(FormView.titled(model.title(), model.form(), words, this::back, () -> {}));
    }

    @Override
    public void register(ShopNames.Name machine) {
        RegisterViewModel model = new RegisterViewModel(machine, shop, tasks, words, this);
        shell.show(FormView.titled(machine.name(), model.form(), words, this::back, model::load));
    }

    @Override
    public void folder(Path start, Consumer<Path> chosen) {
        shell.show(new FolderView(new FolderViewModel(start, tasks, words, this, chosen), words, this));
    }

    @Override
    public void speak(Locale language) {
        with.spoken().speak(language);
        Screens others = new Screens(with);
        shell.beginAnew(with.spoken().words(), others.homeView());
        others.settings();
    }

    @Override
    public void begin(Plan plan) {
        shell.show(
                new BeginView(new BeginViewModel(plan, shop, tasks, words, this, with.clock()), words, pictures, this));
    }

    @Override
    public void run(RunSession session) {
        tasks.run(session::state, state -> {
            showOverHome(
                    new RunScreen(new RunViewModel(session, state, tasks, this, words, with.clock()), pictures, words));
            new GaugeWords(words)
                    .withdrawnLast(state.sheet().run())
                    .ifPresent(said ->
                            tell(Notice.plain(words.say("run.withdrawn"), said, words.say("shell.understood"))));
        });
    }

    @Override
    public void more(RunSession session) {
        tasks.run(
                session::state,
                state -> shell.show(
                        new MoreView(new MoreViewModel(session, state, tasks, this, words), words, pictures)));
    }

    @Override
    public void drawing(RunSession session) {
        tasks.run(
                session::state,
                state -> shell.show(new OnDrawingView(
                        new OnDrawingViewModel(state, with.drawings(), aside, words), words, pictures, this)));
    }

    @Override
    public void form(Deed deed, RunSession session) {
        show(forms.of(deed, inHand(session)));
    }

    @Override
    public void documents(RunSession session) {
        shell.show(new DocumentsView(new DocumentsViewModel(session, tasks, words, this), words, pictures, this));
    }

    @Override
    public void chooseFigures(RunSession session) {
        FiguresChoiceViewModel model =
                new FiguresChoiceViewModel(inHand(session), with.figures(), words, this, with.clock());
        shell.show(FormView.titled(words.say("documents.file"), model.form(), words, this::back, model::load));
    }

    @Override
    public void figures(RunSession session, Path file, FiguresReport report) {
        shell.show(new FiguresView(
                new FiguresViewModel(session, file, report, tasks, words, this, with.clock()), words, pictures, this));
    }

    @Override
    public void sign(RunSession session) {
        tasks.run(
                session::state,
                state -> shell.show(new SignView(
                        new SignViewModel(
                                inHand(session), state.sheet().run().closed().isPresent(), words, this, with.clock()),
                        words,
                        pictures,
                        this)));
    }

    /** Home is not looked up before one comes back to it. */
    @Override
    protected void showOverHome(Screen screen) {
        if (undermost.isEmpty()) {
            home();
        }
        shell.showOver(undermost.orElseThrow(), screen);
    }

    @Override
    public void find(Consumer<String> found) {
        FindViewModel model = new FindViewModel(shop, tasks, words, this, found);
        shell.show(FormView.titled(words.say("find.title"), model.form(), words, this::back, model::load)
                .about(new FindHints(words)));
    }

    @Override
    public void about() {
        shell.show(
                new AboutView(new AboutViewModel(with.facts().get(), with.plans(), tasks, words, this), words, this));
    }

    @Override
    public void licences() {
        shell.show(new LicencesView(new LicencesViewModel(words), words, with.look(), this));
    }

    @Override
    public void reference() {
        shell.show(new ReferenceView(
                new ReferenceViewModel(new Comparison(with.sums()), tasks, words), words, with.look(), this));
    }

    @Override
    public void say(Saying what, RunSession session) {
        show(new WordsForm(what, inHand(session), words, this));
    }

    @Override
    public void gauge(RunSession session) {
        tasks.run(session::state, state -> {
            if (state.settingsHere().isEmpty() && state.calibrated().isEmpty()) {
                form(Deed.OTHER_GAUGE, session);
            } else {
                show(new GaugeForm(inHand(session), words, this));
            }
        });
    }

    @Override
    public void calibration(RunSession session, GaugeOrMaster what) {
        show(new CalibrationForm(inHand(session), what, words, this));
    }

    @Override
    public void wrongSetting(RunSession session, Entry setting, SettingFault fault) {
        show(new WrongSettingForm(inHand(session), setting, fault, words, this));
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
