package org.tenthwise.app.ui.guide;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.session.ShopNames;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.checklists.catalogue.Catalogue;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.words.Words;

/** A few plain pages for whoever opens the client the first time, which can be left at any time. */
public final class GuideViewModel {

    /** The pages, in their order. */
    public enum GuidePage {
        PART,
        PLANS,
        KEYS,
        NAMES
    }

    private static final String CHECK = "java -jar tenthwise.jar check";
    private static final String DEMO = "java -jar tenthwise.jar demo";

    private final String plansAt;
    private final Callable<Catalogue> plans;
    private final Runs shop;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final Plan demo = DemoPart.SCREW_CARRIER.plan();
    private final ReadOnlyObjectWrapper<GuidePage> page = new ReadOnlyObjectWrapper<>(GuidePage.PART);
    private final ReadOnlyBooleanWrapper offered = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyObjectWrapper<List<String>> names = new ReadOnlyObjectWrapper<>(List.of());

    private record Loaded(boolean offered, List<String> names) {}

    /**
     * @param plansAt where plan files are looked for
     * @param plans looks up the plans there are, away from the screen
     */
    public GuideViewModel(
            String plansAt, Callable<Catalogue> plans, Runs shop, LedgerTasks tasks, Words words, Navigator navigator) {
        this.plansAt = plansAt;
        this.plans = plans;
        this.shop = shop;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
    }

    public ReadOnlyObjectProperty<GuidePage> pageProperty() {
        return page.getReadOnlyProperty();
    }

    /** Whether the part to try is among the parts to begin: it is not where the shop has plans of its own. */
    public ReadOnlyBooleanProperty offeredProperty() {
        return offered.getReadOnlyProperty();
    }

    /** Machines and people there are names of. */
    public ReadOnlyObjectProperty<List<String>> namesProperty() {
        return names.getReadOnlyProperty();
    }

    /** The invented part to try. */
    public Plan demo() {
        return demo;
    }

    /** What a page says, a paragraph each. */
    public List<String> said(GuidePage wanted) {
        String all =
                switch (wanted) {
                    case PLANS -> words.say("guide.plans.all", plansAt, CHECK);
                    case PART -> words.say("guide.part.all", demo.part().number(), demo.name(), DEMO);
                    case KEYS -> words.say("guide.keys.all");
                    case NAMES -> words.say("guide.names.all");
                };
        return List.of(all.split("\\s*\\|\\s*"));
    }

    public boolean isFirst() {
        return page.get() == GuidePage.PART;
    }

    public boolean isLast() {
        return page.get() == GuidePage.NAMES;
    }

    /** On to the next page; from the last to the runs. */
    public void goOn() {
        if (isLast()) {
            navigator.back();
        } else {
            page.set(GuidePage.values()[page.get().ordinal() + 1]);
        }
    }

    public void goBack() {
        if (!isFirst()) {
            page.set(GuidePage.values()[page.get().ordinal() - 1]);
        }
    }

    public void begin() {
        navigator.begin(demo);
    }

    public void about() {
        navigator.about();
    }

    public void name(ShopNames.Kind kind) {
        navigator.name(kind);
    }

    public void load() {
        tasks.run(
                () -> new Loaded(
                        plans.call().plans().stream().map(Plan::part).anyMatch(demo.part()::equals),
                        Stream.of(shop.names().machines(), shop.names().people())
                                .flatMap(List::stream)
                                .toList()),
                loaded -> {
                    offered.set(loaded.offered());
                    names.set(loaded.names());
                });
    }

    /** The pages were left; from now on they are shown when they are asked for. */
    public void left() {
        tasks.run(
                () -> {
                    shop.names().begun();
                    return Optional.empty();
                },
                done -> {});
    }
}
