package org.tenthwise.app.ui.home;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.tenthwise.app.session.RunSummary;
import org.tenthwise.app.session.Shop;
import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.shell.Errands;
import org.tenthwise.app.ui.shell.Journey;
import org.tenthwise.checklists.catalogue.Catalogue;

/** Runs begun and parts to begin one on. Both are looked up anew each time the screen is shown. */
public final class HomeViewModel {

    private record Loaded(List<RunSummary> runs, Catalogue catalogue) {
    }

    private final Shop shop;
    private final Callable<Catalogue> plans;
    private final Errands errands;
    private final Words words;
    private final Journey journey;
    private final Clock clock;
    private final ReadOnlyObjectWrapper<List<RunRow>> runs = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<List<PartRow>> parts = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<List<String>> refused = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyStringWrapper remark = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper today = new ReadOnlyStringWrapper("");
    private boolean opening;

    /** @param plans looks up the plans there are, away from the screen */
    public HomeViewModel(Shop shop, Callable<Catalogue> plans, Errands errands, Words words, Journey journey, Clock clock) {
        this.shop = shop;
        this.plans = plans;
        this.errands = errands;
        this.words = words;
        this.journey = journey;
        this.clock = clock;
    }

    /** The run last worked on first. */
    public ReadOnlyObjectProperty<List<RunRow>> runsProperty() {
        return runs.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<List<PartRow>> partsProperty() {
        return parts.getReadOnlyProperty();
    }

    /** A sentence for every plan file that holds no sound plan. */
    public ReadOnlyObjectProperty<List<String>> refusedProperty() {
        return refused.getReadOnlyProperty();
    }

    /** What the plans say of themselves, each remark once. */
    public ReadOnlyStringProperty remarkProperty() {
        return remark.getReadOnlyProperty();
    }

    public ReadOnlyStringProperty todayProperty() {
        return today.getReadOnlyProperty();
    }

    public void load() {
        errands.run(() -> new Loaded(shop.runs(), plans.call()), this::show);
    }

    private void show(Loaded loaded) {
        When when = new When(OffsetDateTime.now(clock), words);
        today.set(when.today());
        List<String> unsound = new ArrayList<>();
        loaded.catalogue().refused().forEach(file -> unsound.add(words.say("home.refused", file.file(),
                file.problems().size(), file.problems().get(0).line(), file.problems().get(0).words())));
        refused.set(unsound);
        Stream<String> remarks = loaded.catalogue().plans().stream().map(plan -> plan.remark().strip());
        remark.set(String.join(" ", remarks.filter(text -> !text.isEmpty()).distinct().toList()));
        runs.set(loaded.runs().stream().map(run -> RunRow.of(run, when, words)).toList());
        parts.set(loaded.catalogue().plans().stream().map(plan -> PartRow.of(plan, words)).toList());
    }

    /** Goes on with a run; one that is closed is looked at. */
    public void goOn(RunRow row) {
        if (row.closed()) {
            journey.record(row.summary().id());
        } else if (!opening) {
            opening = true;
            errands.run(() -> shop.open(row.summary().id()), journey::run, () -> opening = false);
        }
    }

    public void begin(PartRow row) {
        journey.begin(row.plan());
    }

    public void bench() {
        journey.bench();
    }

    public void about() {
        journey.about();
    }
}
