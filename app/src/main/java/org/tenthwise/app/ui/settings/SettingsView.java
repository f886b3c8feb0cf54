package org.tenthwise.app.ui.settings;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Choice;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.settings.SettingsViewModel.SettingsTopic;
import org.tenthwise.app.ui.settings.SettingsViewModel.Way;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.SidedScreen;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Word;
import org.tenthwise.model.words.Words;

/** What can be set on the one side, the thing in hand on the other. */
public final class SettingsView extends SidedScreen {

    private final SettingsViewModel model;
    private final Words words;
    private final Map<SettingsTopic, Region> panels = new EnumMap<>(SettingsTopic.class);
    private final List<Key> keys = new ArrayList<>();
    private final GridPane topics = new GridPane();

    public SettingsView(SettingsViewModel model, Words words, Navigator navigator) {
        super(words.say("settings.title"));
        this.model = model;
        this.words = words;
        topics.setHgap(ScreenSizes.GAP);
        topics.setVgap(ScreenSizes.GAP);
        topics.setMinHeight(USE_PREF_SIZE);
        model.topics().forEach(topic -> keys.add(key(topic)));
        VBox side = new VBox(topics);
        side.getStyleClass().addAll("on-paper", "form-side");
        lay(
                RunHeading.titled(title(), words, navigator::back),
                side,
                ScreenSizes.FORM_SIDE,
                ScreenSizes.SETTINGS_ABOVE);
        owns(model.inHandProperty().subscribe(this::show));
    }

    private Key key(SettingsTopic topic) {
        Key key = new Key(
                Key.Kind.PLAIN,
                Bindings.createStringBinding(() -> words.say("settings", topic)),
                model.value(topic),
                () -> model.take(topic));
        key.setId("settings-" + Word.of(topic));
        key.getStyleClass().addAll("row", "form-field");
        return key;
    }

    @Override
    protected void arranged() {
        int across = isWide() ? 1 : 2;
        topics.getChildren().clear();
        topics.getColumnConstraints().clear();
        for (int column = 0; column < across; column++) {
            ColumnConstraints share = new ColumnConstraints();
            share.setPercentWidth(100.0 / across);
            topics.getColumnConstraints().add(share);
        }
        for (int i = 0; i < keys.size(); i++) {
            topics.add(keys.get(i), i % across, i / across);
        }
    }

    private void show(SettingsTopic topic) {
        rest(panels.computeIfAbsent(topic, this::panel));
        for (int i = 0; i < keys.size(); i++) {
            keys.get(i).showChosen(model.topics().get(i) == topic);
        }
    }

    private Region panel(SettingsTopic topic) {
        VBox panel = new VBox(ScreenSizes.GAP, Texts.label(words.say("settings.question", topic), "heading"));
        panel.getChildren()
                .addAll(
                        switch (topic) {
                            case LANGUAGE -> language();
                            case DISPLAY -> display();
                        });
        panel.getStyleClass().addAll("on-sheet", "form-panel");
        return panel;
    }

    private List<Region> language() {
        Choice<Locale> choice = new Choice<>(model.language(), words, model::name);
        VBox.setVgrow(choice, Priority.ALWAYS);
        return List.of(choice, Texts.label(words.say("settings.language.stays"), "body"));
    }

    private List<Region> display() {
        List<Region> rows = new ArrayList<>();
        for (Way way : Way.values()) {
            rows.add(new HBox(ScreenSizes.GAP, side(way, false), side(way, true)));
        }
        return rows;
    }

    /** The key of one of the two ways. */
    private Key side(Way way, boolean on) {
        BooleanProperty setting = model.of(way);
        String text = words.say(on ? "settings.on" : "settings.off", way);
        Key key = new Key(Key.Kind.PLAIN, text, () -> setting.set(on));
        key.setId("set-%s-%s".formatted(Word.of(way), on ? "on" : "off"));
        key.setPrefWidth(ScreenSizes.SHARE);
        key.setMinHeight(ScreenSizes.DECIDING_KEY);
        HBox.setHgrow(key, Priority.ALWAYS);
        owns(setting.subscribe(now -> {
            key.showChosen(now == on);
            key.speak(now == on ? words.say("choice.chosen", text) : text);
        }));
        return key;
    }
}
