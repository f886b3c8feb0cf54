package org.tenthwise.app.ui.home;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.keys.Deaf;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.keys.Typing;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Heading;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.Look;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** Open runs on the one side, parts to begin one on beside or below them, at the foot the ways elsewhere. */
public final class HomeView extends Screen {

    private final HomeViewModel model;
    private final Words words;
    private final HomeRows rows;
    private final RunList runs;
    private final PagedRows parts;
    private final VBox right;
    private final BorderPane body = new BorderPane();
    /** A finger on its way to where nothing stood must not begin what came there meanwhile. */
    private final Deaf deaf = new Deaf(body);

    private boolean wide = true;

    public HomeView(HomeViewModel model, Words words, PictureFrames pictures) {
        super(words.say("home.title"));
        this.model = model;
        this.words = words;
        Look look = pictures.look();
        rows = new HomeRows(words, pictures);
        runs = new RunList(words.say("home.runs"), model.runs(), rows, words, Optional.of(guide()));
        parts = new PagedRows(words, 0);
        right = side(words.say("home.parts"), parts);
        Label name = Texts.label(title(), "heading");
        name.setMinWidth(USE_PREF_SIZE);
        StackPane title = new StackPane(name);
        Heading heading = new Heading().cell(title);
        title.getStyleClass().remove("lined-left");
        Key handOver = Key.onward("hand-over", words.say("home.hand-over"), model::handOver);
        handOver.disableProperty()
                .bind(Bindings.createBooleanBinding(
                        () -> !model.handsOverValue().getValue(), model.runs().rowsProperty()));
        setTop(heading.cell(words.say("home.machine"), model.machineValue())
                .cell(words.say("home.by"), model.byValue())
                .cell(words.say("home.today"), model.todayProperty())
                .cell(words.say("home.gauges"), model.gaugesProperty())
                .end(night(look.nightProperty()))
                .end(handOver));
        setBottom(foot());
        setCenter(body);
        owns(runs::letGo);
        owns(model.partsProperty().subscribe(this::fill));
        owns(model.folderProperty().subscribe(this::fill));
        owns(model.folderProperty().subscribe((before, now) -> deaf.forAMoment()));
    }

    @Override
    public void onShown() {
        model.load();
    }

    @Override
    public Typing typing() {
        return model.runs().typing();
    }

    @Override
    public void arrange(Arrangement arrangement) {
        wide = arrangement == Arrangement.LANDSCAPE;
        fill();
        right.getStyleClass().removeAll("lined-left", "lined-above");
        right.getStyleClass().add(wide ? "lined-left" : "lined-above");
        right.setMinWidth(wide ? ScreenSizes.PARTS_SIDE : 0);
        right.setMaxWidth(wide ? ScreenSizes.PARTS_SIDE : Double.MAX_VALUE);
        right.setMinHeight(0);
        right.setPrefHeight(wide ? USE_COMPUTED_SIZE : ScreenSizes.PARTS_BELOW);
        body.setCenter(runs);
        body.setRight(wide ? right : null);
        body.setBottom(wide ? null : right);
    }

    private void fill() {
        List<Region> offered = new ArrayList<>(model.partsProperty().get().stream()
                .map(part -> rows.part(part, wide, () -> model.begin(part)))
                .toList());
        if (offered.isEmpty()) {
            offered.add(Texts.label(
                    words.say("home.no-parts", model.folderProperty().get()), "middling", "home-row"));
        }
        if (model.makesPlans()) {
            Key plans = new Key(Key.Kind.PLAIN, words.say("home.plans"), model::plans);
            plans.setId("plans");
            plans.setMinHeight(ScreenSizes.CHOICE_KEY);
            offered.add(plans);
        }
        if (!model.refusedProperty().get().isEmpty()) {
            offered.add(Texts.label(model.refusedProperty().get(), "body", "home-row"));
        }
        if (!model.remarkProperty().get().isEmpty()) {
            offered.add(Texts.label(model.remarkProperty().get(), "body", "second", "home-row"));
        }
        parts.show(offered);
    }

    private VBox side(String title, PagedRows rows) {
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox line = new HBox(ScreenSizes.GAP, Texts.label(title, "heading"), space);
        rows.turnAt(line);
        line.setAlignment(Pos.CENTER_LEFT);
        line.setMinHeight(USE_PREF_SIZE);
        line.getStyleClass().addAll("lined-below", "home-title");
        VBox.setVgrow(rows, Priority.ALWAYS);
        rows.setMinHeight(0);
        VBox side = new VBox(line, rows);
        side.getStyleClass().addAll("on-sheet", "home-side");
        return side;
    }

    private Key night(BooleanProperty night) {
        Key key = Key.onward("setting-night", words.say("home.setting.night"), () -> night.set(!night.get()));
        owns(night.subscribe(on -> {
            key.showChosen(on);
            key.speak(on ? words.say("home.setting.on", key.getText()) : key.getText());
        }));
        return key;
    }

    private Key guide() {
        Key key = Key.onward("guide", words.say("guide.title"), model::guide);
        key.setMinHeight(ScreenSizes.DECIDING_KEY);
        return key;
    }

    private HBox foot() {
        HBox foot = new HBox(
                ScreenSizes.GAP,
                elsewhere("records", "home.records", model::records),
                elsewhere("find", "home.find", model::find),
                elsewhere("bench", "home.bench", model::bench),
                elsewhere("settings", "settings.title", model::settings),
                elsewhere("about", "home.about-key", model::about));
        foot.getStyleClass().addAll("on-paper", "lined-above", "home-foot");
        foot.setMinHeight(USE_PREF_SIZE);
        return foot;
    }

    private Key elsewhere(String id, String text, Runnable go) {
        Key key = Key.onward(id, words.say(text), go);
        return key.shared();
    }
}
