package org.tenthwise.app.ui.home;

import java.util.ArrayList;
import java.util.List;
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

/** Open runs on the one side, parts to begin one on beside or below them, the settings of the look at the foot. */
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
        runs = new RunList(words.say("home.runs"), model.runs(), rows, words, records(), bench());
        parts = new PagedRows(words, 0);
        right = side(words.say("home.parts"), parts);
        Label name = Texts.label(title(), "heading");
        name.setMinWidth(USE_PREF_SIZE);
        StackPane title = new StackPane(name);
        Heading heading = new Heading().cell(title);
        title.getStyleClass().remove("lined-left");
        setTop(heading.cell(words.say("home.today"), model.todayProperty())
                .end(setting("night", look.nightProperty()))
                .end(Key.onward("settings", words.say("settings.title"), model::settings))
                .end(about()));
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
        if (!model.refusedProperty().get().isEmpty()) {
            offered.add(Texts.label(model.refusedProperty().get(), "body", "home-row"));
        }
        if (!model.remarkProperty().get().isEmpty()) {
            offered.add(Texts.label(model.remarkProperty().get(), "body", "second", "home-row"));
        }
        parts.show(offered);
    }

    private VBox side(String title, PagedRows rows) {
        HBox line = new HBox(Texts.label(title, "heading"));
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
        Key key = Key.onward("setting-" + name, words.say("home.setting." + name), () -> setting.set(!setting.get()));
        owns(setting.subscribe(on -> {
            key.showChosen(on);
            key.speak(on ? words.say("home.setting.on", key.getText()) : key.getText());
        }));
        return key;
    }

    private Key records() {
        return Key.onward("records", words.say("home.records"), model::records);
    }

    private Key bench() {
        return Key.onward("bench", words.say("home.bench"), model::bench);
    }

    private Key about() {
        return Key.onward("about", words.say("home.about-key"), model::about);
    }
}
