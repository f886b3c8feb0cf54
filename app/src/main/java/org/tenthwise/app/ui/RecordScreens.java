package org.tenthwise.app.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.tenthwise.app.history.RunShelf;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.matters.OpenMatter;
import org.tenthwise.app.series.Characteristic;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.series.SeriesSums;
import org.tenthwise.app.ui.article.AskReportViewModel;
import org.tenthwise.app.ui.article.JoinedRuns;
import org.tenthwise.app.ui.article.ReportPartViewModel;
import org.tenthwise.app.ui.article.ReportRunsView;
import org.tenthwise.app.ui.article.ReportRunsViewModel;
import org.tenthwise.app.ui.article.ReportView;
import org.tenthwise.app.ui.article.ReportViewModel;
import org.tenthwise.app.ui.article.ReportsView;
import org.tenthwise.app.ui.article.ReportsViewModel;
import org.tenthwise.app.ui.article.SignReportViewModel;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.history.CharacteristicsView;
import org.tenthwise.app.ui.history.CharacteristicsViewModel;
import org.tenthwise.app.ui.history.CourseView;
import org.tenthwise.app.ui.history.CourseViewModel;
import org.tenthwise.app.ui.history.PartFindViewModel;
import org.tenthwise.app.ui.home.HandOverViewModel;
import org.tenthwise.app.ui.home.MattersKeyModel;
import org.tenthwise.app.ui.home.RecordsView;
import org.tenthwise.app.ui.home.RunListViewModel;
import org.tenthwise.app.ui.home.TakeInViewModel;
import org.tenthwise.app.ui.matters.MattersView;
import org.tenthwise.app.ui.matters.MattersViewModel;
import org.tenthwise.app.ui.matters.SettleMatterView;
import org.tenthwise.app.ui.matters.SettleMatterViewModel;
import org.tenthwise.app.ui.pages.PagesView;
import org.tenthwise.app.ui.pages.PagesViewModel;
import org.tenthwise.app.ui.record.RecordView;
import org.tenthwise.app.ui.record.RecordViewModel;
import org.tenthwise.app.ui.shell.Screen;

/** The screens of what was found: records, the history over parts, first-article reports. Screen thread only. */
abstract class RecordScreens extends PlanScreens {

    /** In the language spoken now. */
    protected RecordScreens(Fittings with) {
        super(with);
    }

    /** Shows a screen with nothing between it and home. */
    protected abstract void showOverHome(Screen screen);

    @Override
    public void record(String run) {
        Screen record = new RecordView(
                new RecordViewModel(run, shop, with.handout().get(), tasks, words, this, with.clock()),
                words,
                pictures,
                this);
        if (shell.inHand()
                .filter(screen -> screen instanceof RecordsView
                        || screen instanceof CourseView
                        || screen instanceof MattersView
                        || screen instanceof SettleMatterView)
                .isPresent()) {
            shell.show(record);
        } else {
            showOverHome(record);
        }
    }

    @Override
    public void pages(String run) {
        shell.show(new PagesView(new PagesViewModel(run, with.handout().get(), tasks, words), words, pictures, this));
    }

    @Override
    public void records() {
        shell.show(new RecordsView(
                new RunListViewModel(RunShelf.CLOSED, shop, tasks, words, this, with.clock()),
                new MattersKeyModel(with.matters(), tasks, words, this),
                words,
                pictures,
                this));
    }

    @Override
    public void history() {
        history(Optional.empty());
    }

    @Override
    public void historyOf(String part) {
        history(Optional.of(Sought.ofPart(part)));
    }

    private void history(Optional<Sought> sought) {
        shell.show(new CharacteristicsView(
                new CharacteristicsViewModel(sought, shop, with.views().get(), tasks, words, this),
                words,
                pictures,
                this));
    }

    @Override
    public void course(Sought sought, Characteristic characteristic) {
        course(sought, Optional.of(characteristic));
    }

    @Override
    public void deviations(Sought sought) {
        course(sought, Optional.empty());
    }

    private void course(Sought sought, Optional<Characteristic> one) {
        shell.show(new CourseView(
                new CourseViewModel(
                        sought,
                        one,
                        shop,
                        new SeriesSums(with.sums()),
                        with.views().get(),
                        tasks,
                        words,
                        this),
                words,
                pictures,
                this));
    }

    @Override
    public void findParts(Sought before, List<String> parts, List<Series> known, Consumer<Sought> found) {
        PartFindViewModel model = new PartFindViewModel(before, parts, known, words, this, found);
        shell.show(FormView.titled(words.say("history.find.title"), model.form(), words, this::back, () -> {}));
    }

    @Override
    public void matters() {
        shell.show(new MattersView(new MattersViewModel(with.matters(), tasks, words, this), words, this));
    }

    @Override
    public void settleMatter(OpenMatter matter) {
        tasks.run(() -> shop.names().people(), people -> {
            SettleMatterViewModel model = new SettleMatterViewModel(matter, people, with.matters(), tasks, words, this);
            shell.show(new SettleMatterView(model, words, this));
        });
    }

    @Override
    public void reports() {
        shell.show(new ReportsView(new ReportsViewModel(with.articles(), tasks, words, this), words, this));
    }

    @Override
    public void newReport() {
        ReportPartViewModel model = new ReportPartViewModel(with.articles(), tasks, words, this);
        shell.show(FormView.titled(words.say("report.another"), model.form(), words, this::back, model::load));
    }

    @Override
    public void reportRuns(String part) {
        shell.show(new ReportRunsView(new ReportRunsViewModel(part, with.articles(), tasks, words, this), words, this));
    }

    @Override
    public void askReport(String part, List<String> runs) {
        tasks.run(() -> shop.names().people(), people -> {
            AskReportViewModel model = new AskReportViewModel(part, runs, people, with.articles(), tasks, words, this);
            shell.show(FormView.titled(words.say("report.another"), model.form(), words, this::back, model::load)
                    .about(new JoinedRuns(model)));
        });
    }

    @Override
    public void articleReport(String identifier) {
        Screen report = new ReportView(
                new ReportViewModel(identifier, with.articles(), tasks, words, this), words, pictures, this);
        if (shell.inHand().filter(ReportsView.class::isInstance).isPresent()) {
            shell.show(report);
        } else {
            showOverHome(report);
        }
    }

    @Override
    public void signReport(String identifier) {
        tasks.run(() -> shop.names().people(), people -> {
            SignReportViewModel model =
                    new SignReportViewModel(identifier, people, with.articles(), tasks, words, this);
            shell.show(FormView.titled(words.say("sign.title"), model.form(), words, this::back, model::load));
        });
    }

    @Override
    public void takeIn() {
        TakeInViewModel model = new TakeInViewModel(with.receiving(), with.bundles(), shop, tasks, words, this);
        shell.show(FormView.titled(words.say("take-in.title"), model.form(), words, this::back, model::load));
    }

    @Override
    public void handOver() {
        HandOverViewModel model = new HandOverViewModel(shop, with.handout().get(), tasks, words, this, with.clock());
        shell.show(FormView.titled(words.say("hand-bundle.title"), model.form(), words, this::back, model::load));
    }
}
