package org.tenthwise.app.ui.home;

import java.util.ArrayList;
import java.util.List;
import javafx.animation.PauseTransition;
import javafx.beans.property.BooleanProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import javafx.util.Subscription;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Heading;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.Look;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.model.words.Words;

/** Runs begun on the one side, parts to begin one on beside or below them, the settings of the look at the foot. */
public final class HomeView extends BorderPane implements Screen {

    private static final double PARTS = 472;
    private static final double PARTS_BELOW = 460;
    private static final Duration DEAF = Duration.millis(400);

    private final HomeViewModel model;
    private final Words words;
    private final HomeRows rows;
    private final PagedRows runs;
    private final PagedRows parts;
    private final VBox left;
    private final VBox right;
    private final BorderPane body = new BorderPane();
    private final PauseTransition deaf = new PauseTransition(DEAF);
    private final List<Subscription> following = new ArrayList<>();
    private boolean wide = true;

    public HomeView(HomeViewModel model, Words words, PictureFrames pictures) {
        this.model = model;
        this.words = words;
        Look look = pictures.look();
        rows = new HomeRows(model, words, pictures);
        runs = new PagedRows(words, 0);
        parts = new PagedRows(words, 0);
        left = side(words.say("home.runs"), runs, bench());
        right = side(words.say("home.parts"), parts, new Region());
        Label name = label(words.say("home.title"), "heading");
        name.setMinWidth(USE_PREF_SIZE);
        StackPane title = new StackPane(name);
        Heading heading = new Heading().cell(title);
        title.getStyleClass().remove("lined-left");
        setTop(heading.cell(words.say("home.today"), model.todayProperty())
                .end(setting("night", look.nightProperty()))
                .end(setting("large", look.largeTextProperty()))
                .end(setting("gloves", look.glovesProperty()))
                .end(about()));
        setCenter(body);
        following.add(model.runsProperty().subscribe(this::fill));
        following.add(model.partsProperty().subscribe(this::fill));
        following.add(model.storeProperty().subscribe(this::fill));
        following.add(model.folderProperty().subscribe(this::fill));
        deaf.setOnFinished(over -> body.setMouseTransparent(false));
        following.add(model.storeProperty().subscribe((before, now) -> deafen()));
        following.add(model.folderProperty().subscribe((before, now) -> deafen()));
    }

    @Override
    public Region root() {
        return this;
    }

    @Override
    public String title() {
        return words.say("home.title");
    }

    @Override
    public void onShown() {
        model.load();
    }

    @Override
    public void onGone() {
        following.forEach(Subscription::unsubscribe);
    }

    @Override
    public void arrange(Arrangement arrangement) {
        wide = arrangement == Arrangement.LANDSCAPE;
        fill();
        right.getStyleClass().removeAll("lined-left", "lined-above");
        right.getStyleClass().add(wide ? "lined-left" : "lined-above");
        right.setMinWidth(wide ? PARTS : 0);
        right.setMaxWidth(wide ? PARTS : Double.MAX_VALUE);
        right.setMinHeight(0);
        right.setPrefHeight(wide ? USE_COMPUTED_SIZE : PARTS_BELOW);
        body.setCenter(left);
        body.setRight(wide ? right : null);
        body.setBottom(wide ? null : right);
    }

    /** A finger on its way to where nothing stood must not begin or go on with what came there meanwhile. */
    private void deafen() {
        body.setMouseTransparent(true);
        deaf.playFromStart();
    }

    private void fill() {
        List<Region> begun = new ArrayList<>();
        boolean first = true;
        for (RunRow run : model.runsProperty().get()) {
            begun.add(rows.run(run, first && !run.closed()));
            first &= run.closed();
        }
        if (begun.isEmpty()) {
            begun.add(label(words.say("home.no-runs", model.storeProperty().get()), "middling", "home-row"));
        }
        runs.show(begun);
        List<Region> offered = new ArrayList<>(model.partsProperty().get().stream()
                .map(part -> rows.part(part, wide))
                .toList());
        if (offered.isEmpty()) {
            offered.add(label(words.say("home.no-parts", model.folderProperty().get()), "middling", "home-row"));
        }
        if (!model.refusedProperty().get().isEmpty()) {
            offered.add(label(model.refusedProperty().get(), "body", "home-row"));
        }
        if (!model.remarkProperty().get().isEmpty()) {
            offered.add(label(model.remarkProperty().get(), "body", "second", "home-row"));
        }
        parts.show(offered);
    }

    /** @param end stands at the right of the title */
    private VBox side(String title, PagedRows rows, Region end) {
        Label heading = label(title, "heading");
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox line = new HBox(8, heading, space, end);
        line.setAlignment(Pos.CENTER_LEFT);
        line.setMinHeight(USE_PREF_SIZE);
        line.getStyleClass().addAll("lined-below", "home-title");
        VBox.setVgrow(rows, Priority.ALWAYS);
        rows.setMinHeight(0);
        VBox side = new VBox(line, rows);
        side.getStyleClass().addAll("on-sheet", "home-side");
        return side;
    }

    private Key setting(String name, BooleanProperty setting) {
        Key key = new Key(Key.Kind.PLAIN, words.say("home.setting." + name), () -> setting.set(!setting.get()));
        key.setId("setting-" + name);
        key.getStyleClass().add("home-setting");
        key.setMinWidth(USE_PREF_SIZE);
        following.add(setting.subscribe(on -> {
            key.showChosen(on);
            key.accessibleTextProperty().unbind();
            key.setAccessibleText(on ? words.say("home.setting.on", key.getText()) : key.getText());
        }));
        return key;
    }

    private Key bench() {
        Key key = new Key(Key.Kind.PLAIN, words.say("home.bench"), model::bench);
        key.setId("bench");
        key.getStyleClass().add("home-setting");
        key.setMinWidth(USE_PREF_SIZE);
        return key;
    }

    private Key about() {
        Key key = new Key(Key.Kind.PLAIN, words.say("home.about-key"), model::about);
        key.setId("about");
        key.getStyleClass().add("home-setting");
        key.setMinWidth(USE_PREF_SIZE);
        return key;
    }

    private static Label label(String text, String... styles) {
        Label label = new Label(text);
        label.getStyleClass().addAll(styles);
        label.setWrapText(true);
        label.setAlignment(Pos.TOP_LEFT);
        return label;
    }
}
