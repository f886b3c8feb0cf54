package org.tenthwise.app.ui.home;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.RunShelf;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.ui.form.Shortened;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.checklists.catalogue.Catalogue;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.words.Words;

/** Open runs and parts to begin one on. Both are looked up anew each time the screen is shown. */
public final class HomeViewModel {

    /** As much as a cell of the heading shows. */
    private static final int LONGEST = 20;

    private final Runs shop;
    private final Callable<Catalogue> plans;
    private final boolean makesPlans;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final Clock clock;
    private final RunListViewModel runs;
    private final ReadOnlyObjectWrapper<List<PartRow>> parts = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<LoadingState> folder = new ReadOnlyObjectWrapper<>(LoadingState.NOT_YET);
    private final ReadOnlyStringWrapper refused = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper remark = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper gauges = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper today = new ReadOnlyStringWrapper("");

    /**
     * @param plans looks up the plans there are, away from the screen
     * @param makesPlans whether there is a folder to make them in
     */
    public HomeViewModel(
            Runs shop,
            Callable<Catalogue> plans,
            boolean makesPlans,
            LedgerTasks tasks,
            Words words,
            Navigator navigator,
            Clock clock) {
        this.runs = new RunListViewModel(RunShelf.OPEN, shop, tasks, words, navigator, clock);
        this.shop = shop;
        this.plans = plans;
        this.makesPlans = makesPlans;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
        this.clock = clock;
    }

    /** The open runs. */
    public RunListViewModel runs() {
        return runs;
    }

    public ReadOnlyObjectProperty<List<PartRow>> partsProperty() {
        return parts.getReadOnlyProperty();
    }

    /** Whether the parts are those there are plans of. */
    public ReadOnlyObjectProperty<LoadingState> folderProperty() {
        return folder.getReadOnlyProperty();
    }

    /** That there are plan files which hold no sound plan; empty where there are none. */
    public ReadOnlyStringProperty refusedProperty() {
        return refused.getReadOnlyProperty();
    }

    /** What the plans say of themselves, each remark once and with the parts it is of, a line each. */
    public ReadOnlyStringProperty remarkProperty() {
        return remark.getReadOnlyProperty();
    }

    public ReadOnlyStringProperty todayProperty() {
        return today.getReadOnlyProperty();
    }

    /** The machine last worked on. */
    public ObservableValue<String> machineValue() {
        return ofLast(RunFacts::machine);
    }

    /** Who worked last. */
    public ObservableValue<String> byValue() {
        return ofLast(RunFacts::by);
    }

    private ObservableValue<String> ofLast(Function<RunFacts, String> name) {
        return runs.lastProperty().map(last -> last.map(name)
                .filter(text -> !text.isBlank())
                .map(text -> Shortened.to(LONGEST, text))
                .orElseGet(() -> words.say("home.nobody")));
    }

    /** Whether a gauge was found wrong and not told of since. */
    public ReadOnlyStringProperty gaugesProperty() {
        return gauges.getReadOnlyProperty();
    }

    /** The open run that is handed over from here: the foremost. */
    public ObservableValue<Boolean> handsOverValue() {
        return runs.rowsProperty().map(rows -> !rows.isEmpty() && rows.get(0).open());
    }

    /** Hands the foremost run over; who has it is said there. */
    public void handOver() {
        tasks.run(
                () -> shop.open(runs.rowsProperty().get().get(0).summary().id()),
                session -> navigator.say(Navigator.Saying.HAND_OVER, session));
    }

    /** Looks both up, the one whatever comes of the other; what was seen before stays until then. */
    public void load() {
        today.set(new When(OffsetDateTime.now(clock), words).today());
        runs.load();
        tasks.runOr(plans, this::show, () -> {
            if (folder.get() != LoadingState.DONE) {
                folder.set(LoadingState.FAILED);
            }
        });
        tasks.run(
                shop::gaugesInDoubt,
                doubted -> gauges.set(
                        doubted.isEmpty()
                                ? words.say("home.gauges.none")
                                : words.say("home.gauges.in-doubt", Shortened.to(LONGEST, words.list(doubted)))));
    }

    private void show(Catalogue catalogue) {
        int unsound = catalogue.refused().size();
        refused.set(unsound == 0 ? "" : words.say("home.refused", unsound));
        remark.set(remarks(catalogue.plans()));
        parts.set(
                catalogue.plans().stream().map(plan -> PartRow.of(plan, words)).toList());
        folder.set(LoadingState.DONE);
    }

    private String remarks(List<Plan> plans) {
        Map<String, List<String>> parts = new LinkedHashMap<>();
        plans.stream().filter(plan -> !plan.remark().isBlank()).forEach(plan -> parts.computeIfAbsent(
                        plan.remark().strip(), remark -> new ArrayList<>())
                .add(words.say("run.part", plan.part().number(), plan.part().revision())));
        return parts.entrySet().stream()
                .map(said -> words.say("home.remark", said.getValue(), said.getKey()))
                .collect(Collectors.joining("\n"));
    }

    public void begin(PartRow row) {
        navigator.begin(row.plan());
    }

    public void find() {
        runs.ask();
    }

    public boolean makesPlans() {
        return makesPlans;
    }

    public void plans() {
        navigator.plans();
    }

    public void records() {
        navigator.records();
    }

    public void bench() {
        navigator.bench();
    }

    public void guide() {
        navigator.guide();
    }

    public void settings() {
        navigator.settings();
    }

    public void about() {
        navigator.about();
    }
}
